package org.relegend.demo.page;

import java.util.List;

/** Something to draw a page on: a PDF page, or ink on paper. Lengths in points. */
interface Canvas {
  /** A line of straight strokes. */
  void line(List<Dot> run, double width);

  /** A filled outline. */
  void fill(List<Dot> outline);

  /** A circle's outline. */
  void circle(Dot middle, double radius, double width);

  /** Text on a base line, with the point at its left end, its middle or its right end. */
  void text(String text, Dot at, double size, Align align);

  /** Where a text stands to its point. */
  enum Align {
    LEFT,
    MIDDLE,
    RIGHT
  }
}
