package org.relegend.viewer.session;

/**
 * What a session holds for one of the things that a technician does. A session makes one of each
 * when it begins, and tells it what concerns all; everything else stands in the room itself.
 */
public interface Room {
  /** What is half done is given up. */
  default void drop() {}

  /** A mode is taken in hand: what only stands beside another one ends. */
  default void modeTaken() {}

  /** Something of the session changed; its own parts have taken note of it before. */
  default void follow(Change change) {}

  /** Takes the last edit back where it was one of this room's own; tells whether it was. */
  default boolean undo() {
    return false;
  }

  /** Makes the edit taken back last again, where it was this room's own; tells whether it was. */
  default boolean redo() {
    return false;
  }
}
