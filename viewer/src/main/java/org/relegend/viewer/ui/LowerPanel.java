package org.relegend.viewer.ui;

import java.awt.CardLayout;
import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** What lies below the pictures: the node strip, or one of the lists in its place. */
final class LowerPanel extends JPanel {
  private static final String STRIP = "strip";

  /** Its height at first: the strip's cards whole, and a scroll bar. */
  private static final int HEIGHT = 268;

  private Runnable changed = () -> {};

  LowerPanel(NodeStrip strip) {
    super(new CardLayout());
    add(strip, STRIP);
    setPreferredSize(new Dimension(900, HEIGHT));
    setMinimumSize(new Dimension(200, 120));
  }

  void showStrip() {
    show(STRIP);
  }

  /** Shows a list that was added under this name. */
  void show(String name) {
    ((CardLayout) getLayout()).show(this, name);
    changed.run();
  }

  /** Adds a list by its own name. */
  void addNamed(JComponent list) {
    add(list, list.getName());
  }

  /** Calls back when something else lies there. */
  void onChange(Runnable listener) {
    changed = listener;
  }
}
