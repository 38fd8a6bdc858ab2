package org.relegend.circuit;

import java.util.AbstractList;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * An immutable list of passes that shares all but the last with the one it was grown from: a chain
 * of ten thousand links would need millions of entries otherwise.
 */
final class PassList extends AbstractList<Pass> {
  static final PassList EMPTY = new PassList(null, null, 0);

  private final @Nullable PassList before;
  private final @Nullable Pass last;
  private final int size;

  private PassList(@Nullable PassList before, @Nullable Pass last, int size) {
    this.before = before;
    this.last = last;
    this.size = size;
  }

  PassList and(Pass pass) {
    return new PassList(this, pass, size + 1);
  }

  @Override
  public int size() {
    return size;
  }

  @Override
  public Pass get(int index) {
    Objects.checkIndex(index, size);
    PassList list = this;
    while (list.size > index + 1 && list.before != null) {
      list = list.before;
    }
    return Objects.requireNonNull(list.last);
  }

  @Override
  public Iterator<Pass> iterator() {
    Deque<Pass> passes = new ArrayDeque<>(size);
    for (PassList list = this; list.last != null && list.before != null; list = list.before) {
      passes.addFirst(list.last);
    }
    return List.copyOf(passes).iterator();
  }
}
