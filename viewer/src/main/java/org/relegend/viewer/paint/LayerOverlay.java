package org.relegend.viewer.paint;

import java.awt.AlphaComposite;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import org.relegend.viewer.view.ViewState;

/**
 * Another photo laid over the one shown, drawn in its frame already.
 *
 * @param image of the same extent as the picture, at any size
 * @param share how much it covers, from 0 to 1
 */
public record LayerOverlay(BufferedImage image, float share) implements Overlay {
  @Override
  public void paint(Graphics2D g, ViewState painted) {
    AffineTransform place = painted.transform();
    place.scale(
        painted.pictureWidth() / image.getWidth(), painted.pictureHeight() / image.getHeight());
    Composite before = g.getComposite();
    g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, share));
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(image, place, null);
    g.setComposite(before);
  }
}
