package org.relegend.viewer.tile;

/** How far a picture is. */
public sealed interface PictureStatus {
  /** Whether nothing more comes of it, though not all is there. */
  default boolean isOver() {
    return this instanceof Failed || this instanceof Stopped;
  }

  /** It is being read; what is there already can be seen. From 0 to 1. */
  record InProgress(double fraction) implements PictureStatus {}

  /** Every tile can be had quickly. */
  record Ready() implements PictureStatus {}

  /** It can't be read; what, where and what to do, as sentences for people. */
  record Failed(String reason) implements PictureStatus {}

  /** A person stopped the reading; what is there already can still be seen. */
  record Stopped() implements PictureStatus {}
}
