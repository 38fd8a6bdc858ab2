package org.relegend.demo.part;

import java.util.List;

/**
 * The body that is really fitted at one place of one specimen.
 *
 * @param length body length, or diameter where it is round, in millimetres
 * @param width body width in millimetres
 * @param height height over the board in millimetres
 * @param body sRGB colour {@code 0xRRGGBB}
 * @param ink sRGB colour of its print
 * @param marks lines printed on it
 * @param fresh whether its joints were soldered anew
 */
public record Fitting(
    Style style,
    double length,
    double width,
    double height,
    int body,
    int ink,
    List<String> marks,
    boolean fresh) {
  public Fitting {
    marks = List.copyOf(marks);
  }

  public Fitting marked(String... lines) {
    return new Fitting(style, length, width, height, body, ink, List.of(lines), fresh);
  }

  public Fitting coloured(int newBody, int newInk) {
    return new Fitting(style, length, width, height, newBody, newInk, marks, fresh);
  }

  public Fitting sized(double newLength, double newWidth, double newHeight) {
    return new Fitting(style, newLength, newWidth, newHeight, body, ink, marks, fresh);
  }

  public Fitting styled(Style other) {
    return new Fitting(other, length, width, height, body, ink, marks, fresh);
  }

  public Fitting resoldered() {
    return new Fitting(style, length, width, height, body, ink, marks, true);
  }
}
