package org.relegend.viewer.ui;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import org.relegend.map.Box;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.paint.Palette;
import org.relegend.viewer.view.ViewState;

/** The rubber band that marks all within it. */
record BandOverlay(Box band) implements Overlay {
  @Override
  public void paint(Graphics2D g, ViewState painted) {
    Box there = painted.onScreen(band);
    int x = (int) there.left();
    int y = (int) there.top();
    int width = (int) there.width();
    int height = (int) there.height();
    g.setColor(Palette.BLACK);
    g.setStroke(new BasicStroke(3));
    g.drawRect(x, y, width, height);
    g.setColor(Palette.SKY_BLUE);
    g.setStroke(
        new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {6, 4}, 0));
    g.drawRect(x, y, width, height);
  }
}
