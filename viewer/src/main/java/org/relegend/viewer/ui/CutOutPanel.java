package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import org.relegend.map.Box;
import org.relegend.map.Picture;
import org.relegend.map.Placement;
import org.relegend.viewer.paint.Mark;
import org.relegend.viewer.paint.MarkOverlay;
import org.relegend.viewer.view.Orientation;

/** A piece of a picture around one place, with a word beneath; or why there is none. */
final class CutOutPanel extends JPanel {
  /** The least that is shown around a place, as a share of the picture's width. */
  private static final double LEAST = 0.055;

  private CutOutPanel(String word) {
    super(new BorderLayout(0, 2));
    setOpaque(false);
    JLabel label = new JLabel(word, SwingConstants.CENTER);
    label.putClientProperty("FlatLaf.styleClass", "small");
    add(label, BorderLayout.SOUTH);
  }

  /** Around a placement; the picture's hazard zones lie over it as everywhere. */
  static CutOutPanel of(
      Overlays scene, Placement placement, String word, Mark.Emphasis emphasis, int side) {
    CutOutPanel cut = new CutOutPanel(word);
    scene
        .map()
        .picture(placement.picture())
        .ifPresent(picture -> cut.add(canvas(scene, picture, placement, emphasis, side)));
    return cut;
  }

  /** A whole picture, with its hazard zones. */
  static CutOutPanel whole(Overlays scene, Picture picture, String word, int side) {
    CutOutPanel cut = new CutOutPanel(word);
    PictureCanvas canvas = new PictureCanvas();
    canvas.setInteractive(false);
    canvas.setPreferredSize(new Dimension(side, side));
    canvas.show(scene.shelf().of(picture), Orientation.UPRIGHT);
    canvas.setHazards(scene.zonesOn(picture.id()));
    MouseAdapter lay =
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent event) {
            scene.lay(picture);
          }
        };
    cut.addMouseListener(lay);
    canvas.addMouseListener(lay);
    cut.add(canvas);
    return cut;
  }

  /** An empty frame that says why nothing is shown. */
  static CutOutPanel empty(String why, String word, int side) {
    CutOutPanel cut = new CutOutPanel(word);
    JLabel frame = new JLabel("<html><center>" + why + "</center></html>", SwingConstants.CENTER);
    frame.putClientProperty("FlatLaf.styleClass", "small");
    frame.setForeground(UIManager.getColor("Label.disabledForeground"));
    frame.setBorder(
        BorderFactory.createDashedBorder(UIManager.getColor("Component.borderColor"), 3, 2));
    frame.setPreferredSize(new Dimension(side, side));
    cut.add(frame);
    return cut;
  }

  private static PictureCanvas canvas(
      Overlays scene, Picture picture, Placement placement, Mark.Emphasis emphasis, int side) {
    PictureCanvas canvas = new PictureCanvas();
    canvas.setInteractive(false);
    canvas.setPreferredSize(new Dimension(side, side));
    Box around = around(picture, placement);
    canvas.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            canvas.zoomTo(around);
          }
        });
    canvas.show(scene.shelf().of(picture), Orientation.UPRIGHT);
    canvas.setOverlays(
        List.of(new MarkOverlay(List.of(scene.mark(placement, emphasis).unlabelled()))));
    canvas.setHazards(scene.zonesOn(picture.id()));
    return canvas;
  }

  private static Box around(Picture picture, Placement placement) {
    Box body =
        placement.outline().isEmpty()
            ? Box.around(List.of(placement.at()))
            : Box.around(placement.outline());
    double least = picture.width() * LEAST;
    double margin = Math.max(least / 2, Math.max(body.width(), body.height()) * 0.4);
    return body.grown(margin);
  }
}
