package org.relegend.twin;

import java.util.Arrays;
import java.util.List;

/** A growing list of numbers. */
final class IntList {
  private int[] values = new int[16];
  private int size;

  void add(int value) {
    if (size == values.length) {
      values = Arrays.copyOf(values, 2 * size);
    }
    values[size++] = value;
  }

  void addTo(IntList other) {
    for (int i = 0; i < size; i++) {
      other.add(values[i]);
    }
  }

  int get(int index) {
    return values[index];
  }

  int removeLast() {
    return values[--size];
  }

  int size() {
    return size;
  }

  boolean isEmpty() {
    return size == 0;
  }

  void clear() {
    size = 0;
  }

  List<Integer> toList() {
    return Arrays.stream(values, 0, size).boxed().toList();
  }

  IntList copy() {
    IntList copy = new IntList();
    copy.values = Arrays.copyOf(values, Math.max(16, size));
    copy.size = size;
    return copy;
  }
}
