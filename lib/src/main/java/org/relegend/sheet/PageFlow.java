package org.relegend.sheet;

import java.util.List;

/** Content that runs down the pages, a new page wherever the next piece doesn't fit. */
final class PageFlow {
  static final double BODY = 9;
  private static final double LEADING = 1.25;

  private final SheetDocument press;
  private SheetPage leaf;
  private double y;

  PageFlow(SheetDocument press) {
    this.press = press;
    this.leaf = press.newLeaf();
    this.y = press.top();
  }

  SheetDocument press() {
    return press;
  }

  SheetPage leaf() {
    return leaf;
  }

  /** The upper edge of what comes next. */
  double y() {
    return y;
  }

  double room() {
    return press.bottom() - y;
  }

  void newPage() {
    leaf = press.newLeaf();
    y = press.top();
  }

  private boolean atTop() {
    return y <= press.top();
  }

  /** Begins a new page where less room than this is left. Tells whether it did. */
  boolean need(double height) {
    if (room() >= height || atTop()) {
      return false;
    }
    newPage();
    return true;
  }

  void down(double height) {
    y += height;
  }

  static double lead(double size) {
    return size * LEADING;
  }

  void heading(String text, double size) {
    need(lead(size) + 40); // not alone at the foot of a page
    for (String line : press.face().wrapped(text, size, press.width())) {
      line(line, press.left(), size, true);
    }
    down(3);
  }

  void paragraph(String text) {
    paragraph(text, BODY, false);
  }

  void paragraph(String text, double size, boolean bold) {
    indented(text, 0, size, bold);
    down(3);
  }

  /** Lines that keep a distance from the left edge. */
  void indented(String text, double indent, double size, boolean bold) {
    for (String line : press.face().wrapped(text, size, press.width() - indent - (bold ? 4 : 0))) {
      line(line, press.left() + indent, size, bold);
    }
  }

  private void line(String line, double x, double size, boolean bold) {
    need(lead(size));
    leaf.text(line, x, y + size, size, bold);
    down(lead(size));
  }

  /**
   * Texts below bold titles, kept on one page, in a frame.
   *
   * @param border width of the frame's line
   * @param aside width that is kept free at the right, for a sign
   */
  void framed(List<String> titles, List<String> texts, double size, double border, double aside) {
    double inner = press.width() - 16 - aside;
    double height = 8;
    for (int i = 0; i < titles.size(); i++) {
      height += lead(size) * press.face().wrapped(titles.get(i), size, inner - 4).size();
      height += lead(size) * press.face().wrapped(texts.get(i), size, inner).size() + 2;
    }
    need(height);
    leaf.box(press.left() + border / 2, y, press.width() - border, height, border);
    double end = y + height;
    down(4);
    for (int i = 0; i < titles.size(); i++) {
      lines(titles.get(i), size, inner - 4, true);
      lines(texts.get(i), size, inner, false);
      down(2);
    }
    y = end;
    down(6);
  }

  private void lines(String text, double size, double width, boolean bold) {
    for (String line : press.face().wrapped(text, size, width)) {
      line(line, press.left() + 8, size, bold);
    }
  }
}
