package org.relegend.demo.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A page while it is drawn: strokes go to the canvas, and all that has a name is noted with its
 * place. Places are given in drawing units of 10 points, from an origin that may be moved.
 */
public final class Plan {
  static final double UNIT = 10;
  static final double THIN = 0.7;
  static final double WIRE = 0.9;
  static final double BOLD = 1.5;
  private static final double NAME_SIZE = 8;
  private static final double VALUE_SIZE = 7;

  private final Canvas canvas;
  private final List<Mark> marks = new ArrayList<>();
  private final List<List<Dot>> wires = new ArrayList<>();
  private final List<Dot> joints = new ArrayList<>();
  private double left;
  private double top;

  Plan(Canvas canvas) {
    this.canvas = canvas;
  }

  /** From now on, places count from here; in units of the page. */
  void origin(double x, double y) {
    left = x;
    top = y;
  }

  public List<Mark> marks() {
    return List.copyOf(marks);
  }

  /** The wires drawn: each joins what ends on its ends, and what a joint says. */
  public List<List<Dot>> wires() {
    return List.copyOf(wires);
  }

  /** Where crossing wires are joined. */
  public List<Dot> joints() {
    return List.copyOf(joints);
  }

  Dot at(double x, double y) {
    return new Dot((left + x) * UNIT, (top + y) * UNIT);
  }

  /** A wire through places given as x, y, x, y… */
  void wire(double... places) {
    List<Dot> run = run(places);
    wires.add(run);
    canvas.line(run, WIRE);
  }

  void stroke(double width, double... places) {
    canvas.line(run(places), width);
  }

  void fill(double... places) {
    canvas.fill(run(places));
  }

  void circle(double x, double y, double radius, double width) {
    canvas.circle(at(x, y), radius * UNIT, width);
  }

  /** A dot where wires that meet or cross are joined. */
  void joint(double x, double y) {
    joints.add(at(x, y));
    blob(x, y, 0.22);
  }

  void blob(double x, double y, double radius) {
    double[] places = new double[24];
    for (int k = 0; k < 12; k++) {
      places[2 * k] = x + radius * StrictMath.cos(k * Math.PI / 6);
      places[2 * k + 1] = y + radius * StrictMath.sin(k * Math.PI / 6);
    }
    fill(places);
  }

  /** Notes where a pin ends. */
  void pin(String part, String pin, Dot place) {
    mark(Mark.Kind.PIN, part + "." + pin, at(place.x(), place.y()), List.of());
  }

  /** Notes a body or section: its middle and its outline's corners. */
  void body(Mark.Kind kind, String subject, double... outline) {
    List<Dot> corners = run(outline);
    double x = corners.stream().mapToDouble(Dot::x).average().orElseThrow();
    double y = corners.stream().mapToDouble(Dot::y).average().orElseThrow();
    mark(kind, subject, new Dot(x, y), corners);
  }

  /** Writes a part's name and notes the middle of the lettering. */
  void name(String part, double x, double y, Canvas.Align align) {
    canvas.text(part, at(x, y), NAME_SIZE, align);
    double shift =
        switch (align) {
          case LEFT -> 0.3;
          case MIDDLE -> 0;
          case RIGHT -> -0.3;
        };
    Dot middle = at(x + shift * part.length() * 0.85, y - 0.29);
    mark(Mark.Kind.NAME, part, middle, List.of());
  }

  void value(String value, double x, double y, Canvas.Align align) {
    canvas.text(value, at(x, y), VALUE_SIZE, align);
  }

  void text(String text, double x, double y, double size, Canvas.Align align) {
    canvas.text(text, at(x, y), size, align);
  }

  /** Notes the place of a net's label. */
  void label(String net, double x, double y) {
    mark(Mark.Kind.LABEL, "net:" + net, at(x, y), List.of());
  }

  private void mark(Mark.Kind kind, String subject, Dot place, List<Dot> outline) {
    marks.add(new Mark(kind, subject, place, outline));
  }

  private List<Dot> run(double... places) {
    List<Dot> run = new ArrayList<>();
    for (int k = 0; k < places.length; k += 2) {
      run.add(at(places[k], places[k + 1]));
    }
    return run;
  }
}
