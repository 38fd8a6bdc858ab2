package org.relegend.twin;

import java.util.Arrays;
import java.util.function.IntToLongFunction;

/** Some elements, ordered by a signature. */
final class SignatureIndex {
  private int[] elements = new int[16];
  private long[] signatures = new long[16];
  private int size;

  void clear() {
    size = 0;
  }

  boolean isEmpty() {
    return size == 0;
  }

  int size() {
    return size;
  }

  /** Adds one, unless it is the latest already, as an element with two pins on a net. */
  void add(int element) {
    if (size > 0 && elements[size - 1] == element) {
      return;
    }
    if (size == elements.length) {
      elements = Arrays.copyOf(elements, 2 * size);
      signatures = Arrays.copyOf(signatures, 2 * size);
    }
    elements[size++] = element;
  }

  int[] elements() {
    return Arrays.copyOf(elements, size);
  }

  int element(int index) {
    return elements[index];
  }

  long signature(int index) {
    return signatures[index];
  }

  /** Gives each its signature and orders them by it. */
  void sign(IntToLongFunction signature) {
    for (int i = 0; i < size; i++) {
      signatures[i] = signature.applyAsLong(elements[i]);
    }
    if (size > 40) {
      sortMany();
    } else {
      sortFew();
    }
  }

  private void sortFew() {
    for (int i = 1; i < size; i++) {
      long key = signatures[i];
      int element = elements[i];
      int j = i;
      for (; j > 0 && signatures[j - 1] > key; j--) {
        signatures[j] = signatures[j - 1];
        elements[j] = elements[j - 1];
      }
      signatures[j] = key;
      elements[j] = element;
    }
  }

  private void sortMany() {
    Integer[] order = new Integer[size];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> Long.compare(signatures[a], signatures[b]));
    long[] keys = signatures.clone();
    int[] old = elements.clone();
    for (int i = 0; i < size; i++) {
      signatures[i] = keys[order[i]];
      elements[i] = old[order[i]];
    }
  }

  /** Where the run of equal signatures that begins here ends. */
  int runEnd(int from) {
    int end = from + 1;
    while (end < size && signatures[end] == signatures[from]) {
      end++;
    }
    return end;
  }
}
