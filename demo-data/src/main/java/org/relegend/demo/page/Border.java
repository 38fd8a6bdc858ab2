package org.relegend.demo.page;

import org.relegend.demo.page.Canvas.Align;

/** The frame of a drawing and its title block. */
final class Border {
  private Border() {}

  /** Width and height of the page in drawing units. */
  static void draw(
      Plan plan, double width, double height, String title, String part, String sheet) {
    double margin = 1.4;
    double right = width - margin;
    double low = height - margin;
    plan.stroke(Plan.BOLD, margin, margin, right, margin, right, low, margin, low, margin, margin);
    double left = right - 26;
    double top = low - 4.6;
    plan.stroke(Plan.WIRE, left, low, left, top, right, top);
    plan.stroke(Plan.THIN, left, top + 2.3, right, top + 2.3);
    plan.stroke(Plan.THIN, left + 17, top + 2.3, left + 17, low);
    plan.text("QUILLMARSH", left + 0.6, top + 1.6, 10, Align.LEFT);
    plan.text(title, left + 8, top + 1.5, 7.5, Align.LEFT);
    plan.text(part, left + 0.6, top + 3.8, 7.5, Align.LEFT);
    plan.text(sheet, left + 17.5, top + 3.3, 7, Align.LEFT);
    plan.text("ISS 2   6.78", left + 17.5, top + 4.2, 6, Align.LEFT);
  }
}
