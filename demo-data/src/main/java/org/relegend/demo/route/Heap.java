package org.relegend.demo.route;

import java.util.Arrays;

/** A queue of numbers that gives the least first; numbers are not boxed. */
final class Heap {
  private long[] values = new long[1024];
  private int size;

  void clear() {
    size = 0;
  }

  boolean isEmpty() {
    return size == 0;
  }

  void add(long value) {
    if (size == values.length) {
      values = Arrays.copyOf(values, 2 * size);
    }
    int at = size++;
    while (at > 0 && values[(at - 1) / 2] > value) {
      values[at] = values[(at - 1) / 2];
      at = (at - 1) / 2;
    }
    values[at] = value;
  }

  /** The least number, taken out; the heap must not be empty. */
  long remove() {
    long least = values[0];
    long last = values[--size];
    int at = 0;
    int child = 1;
    while (child < size) {
      if (child + 1 < size && values[child + 1] < values[child]) {
        child++;
      }
      if (values[child] >= last) {
        break;
      }
      values[at] = values[child];
      at = child;
      child = 2 * at + 1;
    }
    values[at] = last;
    return least;
  }
}
