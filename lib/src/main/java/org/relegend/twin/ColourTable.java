package org.relegend.twin;

import java.util.Arrays;

/**
 * How often each colour is on either side, and one element of it there. A table of plain numbers
 * (open addressing, linear probing), since maps of boxed numbers take most of the time at 100,000
 * parts.
 */
final class ColourTable {
  private static final int SEVERAL = -2;

  private final long[] colours;
  private final boolean[] used;

  /** The one element of the colour on a side; {@link TwinAssignment#NONE} or {@link #SEVERAL}. */
  private final int[] first;

  private final int[] second;
  private boolean empty = true;

  /**
   * @param most so many colours at most
   */
  ColourTable(int most) {
    int rows = Integer.highestOneBit(Math.max(8, most)) * 4;
    colours = new long[rows];
    used = new boolean[rows];
    first = new int[rows];
    second = new int[rows];
    Arrays.fill(first, TwinAssignment.NONE);
    Arrays.fill(second, TwinAssignment.NONE);
  }

  void addFirst(long colour, int e) {
    add(first, colour, e);
  }

  void addSecond(long colour, int e) {
    add(second, colour, e);
  }

  private void add(int[] side, long colour, int e) {
    // colours are mixed already, so their low bits will do
    int row = (int) colour & (used.length - 1);
    while (used[row] && colours[row] != colour) {
      row = (row + 1) & (used.length - 1);
    }
    used[row] = true;
    colours[row] = colour;
    side[row] = side[row] == TwinAssignment.NONE ? e : SEVERAL;
    empty = false;
  }

  boolean isEmpty() {
    return empty;
  }

  int rows() {
    return used.length;
  }

  /** Whether the colour is once on each side. */
  boolean onePair(int row) {
    return first[row] >= 0 && second[row] >= 0;
  }

  int first(int row) {
    return first[row];
  }

  int second(int row) {
    return second[row];
  }
}
