package org.relegend.viewer.work;

import java.util.function.BooleanSupplier;

/**
 * The one thread that may touch a thing: the event thread in the program, the test's own thread in
 * tests. A call from any other fails at once and loudly, so that what it guards needs no locks.
 */
public final class OwnerThread {
  private final String name;
  private final BooleanSupplier isOwner;

  private OwnerThread(String name, BooleanSupplier isOwner) {
    this.name = name;
    this.isOwner = isOwner;
  }

  /** Owned by whatever thread the test tells apart, for instance the event thread. */
  public static OwnerThread of(String name, BooleanSupplier isOwner) {
    return new OwnerThread(name, isOwner);
  }

  /** Owned by the thread that calls this. */
  public static OwnerThread current() {
    Thread owner = Thread.currentThread();
    return new OwnerThread(owner.getName(), () -> Thread.currentThread() == owner);
  }

  /**
   * Lets the owner pass.
   *
   * @throws IllegalStateException on any other thread
   */
  public void check() {
    if (!isOwner.getAsBoolean()) {
      throw new IllegalStateException(
          "only %s may do this, not %s".formatted(name, Thread.currentThread().getName()));
    }
  }
}
