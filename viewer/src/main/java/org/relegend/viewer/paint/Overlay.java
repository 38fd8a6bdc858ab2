package org.relegend.viewer.paint;

import java.awt.Graphics2D;
import org.relegend.viewer.view.ViewState;

/**
 * Something painted over a picture. Immutable: to show other things, make another one. What is
 * painted may depend on the view's scale and orientation, never on where its corner is, since parts
 * of the screen are painted at different times while the picture moves.
 */
@FunctionalInterface
public interface Overlay {
  /**
   * Paints what touches the clip.
   *
   * @param g in component pixels; whatever is changed in it is discarded afterwards
   * @param painted the view of the picture that lies beneath, so that nothing slides against it
   */
  void paint(Graphics2D g, ViewState painted);
}
