package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.viewer.control.DisplayNames;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.view.Orientation;

/** All pages, or all photos, as small pictures; a click lays one on the desk. */
final class Filmstrip extends JScrollPane {
  private static final int WIDE = 104;
  private static final int HIGH = 78;

  private final Session session;
  private final Overlays scene;
  private final Supplier<List<Picture>> pictures;
  private final Supplier<Optional<? extends Picture>> shown;
  private final Consumer<PictureId> lay;
  private final JPanel column = new JPanel();
  private final List<Frame> frames = new ArrayList<>();
  private List<Picture> laid = List.of();
  private Runnable chosen = () -> {};

  /**
   * @param pictures all that can be laid there
   * @param shown the one that lies there
   */
  Filmstrip(
      Session session,
      Overlays scene,
      String name,
      Supplier<List<Picture>> pictures,
      Supplier<Optional<? extends Picture>> shown,
      Consumer<PictureId> lay) {
    super(
        ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
        ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    this.session = session;
    this.scene = scene;
    this.pictures = pictures;
    this.shown = shown;
    this.lay = lay;
    column.setLayout(new BoxLayout(column, BoxLayout.Y_AXIS));
    column.setBorder(BorderFactory.createEmptyBorder(4, 4, 4, 4));
    setViewportView(column);
    setBorder(BorderFactory.createEmptyBorder());
    getVerticalScrollBar().setUnitIncrement(24);
    getViewport().addChangeListener(moved -> fillVisible());
    column.getAccessibleContext().setAccessibleName(name);
    refresh();
  }

  /** Calls back after a picture was laid on the desk by a click. */
  void onChosen(Runnable listener) {
    chosen = listener;
  }

  /** Takes note that pictures came, went or are shown now; hidden where there is no choice. */
  void refresh() {
    List<Picture> now = pictures.get();
    if (!now.equals(laid)) {
      laid = now;
      frames.clear();
      column.removeAll();
      now.forEach(this::add);
      setVisible(now.size() > 1);
      column.revalidate();
      column.repaint();
    }
    Optional<PictureId> onDesk = shown.get().map(picture -> picture.id());
    frames.forEach(frame -> frame.setShown(onDesk.equals(Optional.of(frame.picture.id()))));
    SwingUtilities.invokeLater(this::fillVisible);
  }

  /** Paints the hazard zones as they are now; pictures may have come or gone with an edit. */
  void remark() {
    if (pictures.get().equals(laid)) {
      frames.forEach(Frame::remark);
    } else {
      refresh();
    }
  }

  private void add(Picture picture) {
    Frame frame = new Frame(picture);
    frames.add(frame);
    column.add(frame);
    column.add(Box.createVerticalStrut(4));
  }

  /** Lays the picture that is so many further on the desk, round the ends. */
  void step(int by) {
    List<PictureId> ids = laid.stream().map(Picture::id).toList();
    shown
        .get()
        .map(picture -> ids.indexOf(picture.id()))
        .filter(at -> at >= 0)
        .ifPresent(at -> lay.accept(ids.get(Math.floorMod(at + by, ids.size()))));
  }

  private void fillVisible() {
    Rectangle seen = getViewport().getViewRect();
    frames.stream().filter(frame -> frame.getBounds().intersects(seen)).forEach(Frame::fill);
  }

  /** One small picture with its name. */
  private final class Frame extends JPanel {
    private final Picture picture;
    private final PictureCanvas canvas = new PictureCanvas();
    private boolean filled;

    Frame(Picture picture) {
      super(new BorderLayout(0, 1));
      this.picture = picture;
      canvas.setInteractive(false);
      canvas.setPreferredSize(new Dimension(WIDE, HIGH));
      add(canvas, BorderLayout.CENTER);
      JLabel label =
          new JLabel(
              scene.isOfUnit(picture.id())
                  ? Messages.of("photo.unit.short", picture.caption())
                  : picture.caption());
      label.putClientProperty("FlatLaf.styleClass", "small");
      label.setPreferredSize(new Dimension(WIDE, label.getPreferredSize().height));
      add(label, BorderLayout.SOUTH);
      setMaximumSize(getPreferredSize());
      String caption = DisplayNames.caption(session.map(), picture);
      setToolTipText(caption);
      getAccessibleContext().setAccessibleName(caption);
      MouseAdapter chooser =
          new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
              lay.accept(picture.id());
              chosen.run();
            }
          };
      addMouseListener(chooser);
      canvas.addMouseListener(chooser);
    }

    void fill() {
      if (!filled) {
        filled = true;
        canvas.show(scene.shelf().of(picture), Orientation.UPRIGHT);
        remark();
      }
    }

    void remark() {
      if (filled) {
        canvas.setHazards(scene.zonesOn(picture.id()));
      }
    }

    void setShown(boolean shown) {
      Color frame = UIManager.getColor(shown ? "Component.focusColor" : "Component.borderColor");
      int thick = shown ? 3 : 1;
      setBorder(
          BorderFactory.createCompoundBorder(
              BorderFactory.createLineBorder(frame, thick),
              BorderFactory.createEmptyBorder(4 - thick, 4 - thick, 2, 4 - thick)));
    }
  }
}
