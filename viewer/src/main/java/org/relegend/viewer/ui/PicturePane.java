package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Box;
import org.relegend.map.HazardZone;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.viewer.control.DisplayNames;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.paint.HazardOverlay;
import org.relegend.viewer.paint.LabelOverlay;
import org.relegend.viewer.paint.LayerOverlay;
import org.relegend.viewer.paint.MarkOverlay;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.ViewRequest;
import org.relegend.viewer.tile.PictureSource;
import org.relegend.viewer.tile.PictureStatus;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** One of the two pictures on the desk, with its name, its marks and the others to choose from. */
final class PicturePane extends JPanel {
  private static final String PICTURE = "picture";
  private static final String NOTHING = "nothing";

  /** Taken for the size of a canvas that has none yet, in component pixels. */
  private static final int UNSEEN = 800;

  private final Session session;
  private final Overlays scene;
  private final Function<Mode, ModeView> views;
  private final Supplier<Optional<? extends Picture>> shown;
  private final PictureCanvas canvas = new PictureCanvas();
  private final JPanel middle = new JPanel(new CardLayout());
  private final JLabel title = new JLabel();
  private final JLabel state = new JLabel();
  private final Filmstrip filmstrip;
  private final Map<PictureId, ViewState> seen = new HashMap<>();
  private final Runnable heard = this::showState;
  private @Nullable Picture picture;
  private String about = "";
  private @Nullable SessionPointer hand;
  private MarkOverlay marks = new MarkOverlay(List.of());
  private Optional<LayerOverlay> layer = Optional.empty();
  private LabelOverlay labels = new LabelOverlay(List.of());

  /**
   * @param views how each mode shows itself
   * @param kind "page" or "photo", for its texts
   * @param shown what lies on the desk there
   * @param lay lays one of them there
   * @param filmstripAt {@link BorderLayout#WEST} or {@link BorderLayout#EAST}
   */
  PicturePane(
      Session session,
      Overlays scene,
      Function<Mode, ModeView> views,
      String kind,
      Supplier<Optional<? extends Picture>> shown,
      Supplier<List<Picture>> all,
      Consumer<PictureId> lay,
      String filmstripAt) {
    super(new BorderLayout());
    this.session = session;
    this.scene = scene;
    this.views = views;
    this.shown = shown;
    filmstrip = new Filmstrip(session, scene, Messages.of(kind + ".list"), all, shown, lay);
    add(head(), BorderLayout.NORTH);
    add(filmstrip, filmstripAt);
    middle.add(canvas, PICTURE);
    middle.add(nothing(kind), NOTHING);
    add(middle, BorderLayout.CENTER);
    middle.getAccessibleContext().setAccessibleName(Messages.of(kind + ".area"));
    canvas.setName(kind);
    title.setName(kind + "-title");
    state.setName(kind + "-state");
    canvas.onView(this::viewChanged);
    giveArrowsAway();
    refresh();
  }

  private JComponent head() {
    JPanel head = new JPanel(new BorderLayout(8, 0));
    head.setBorder(BorderFactory.createEmptyBorder(4, 10, 4, 10));
    title.putClientProperty("FlatLaf.styleClass", "h4");
    head.add(title, BorderLayout.CENTER);
    head.add(state, BorderLayout.EAST);
    return head;
  }

  private static JComponent nothing(String kind) {
    JLabel text =
        new JLabel(
            "<html><center><b>%s</b><br><br>%s</center></html>"
                .formatted(Messages.of(kind + ".none.title"), Messages.of(kind + ".none.text")),
            SwingConstants.CENTER);
    text.putClientProperty("FlatLaf.styleClass", "large");
    return text;
  }

  /** Plain arrows and Enter belong to the strip, digits to the evidence; Shift and arrows pan. */
  private void giveArrowsAway() {
    InputMap keys = canvas.getInputMap(JComponent.WHEN_FOCUSED);
    for (String direction : List.of("left", "right", "up", "down")) {
      String key = direction.toUpperCase(java.util.Locale.ROOT);
      keys.put(KeyStroke.getKeyStroke(key), "none");
      keys.put(KeyStroke.getKeyStroke("shift " + key), "pan-" + direction);
    }
    for (String key : List.of("ENTER", "0", "1", "L", "ESCAPE")) {
      keys.put(KeyStroke.getKeyStroke(key), "none");
    }
    for (char typed = '0'; typed <= '9'; typed++) {
      keys.put(KeyStroke.getKeyStroke(typed), "none");
    }
  }

  PictureCanvas canvas() {
    return canvas;
  }

  Filmstrip filmstrip() {
    return filmstrip;
  }

  /** Calls back when the canvas gets the keyboard. */
  void onFocus(Runnable listener) {
    canvas.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent event) {
            listener.run();
          }
        });
  }

  /** Does what a canvas key does, by the name of its action. */
  void act(String action) {
    javax.swing.Action found = canvas.getActionMap().get(action);
    if (found != null) {
      found.actionPerformed(
          new java.awt.event.ActionEvent(
              canvas, java.awt.event.ActionEvent.ACTION_PERFORMED, action));
    }
  }

  /** Turns the view by a quarter, clockwise. */
  void turn() {
    canvas.view().ifPresent(view -> canvas.setOrientation(view.orientation().turned(1)));
  }

  /** Shows the solder side as through the board, lying as the component side does; and back. */
  void seeThrough() {
    if (picture instanceof Photo photo && photo.side() == Side.SOLDER) {
      boolean through = canvas.view().filter(view -> view.orientation().mirrored()).isPresent();
      canvas.setOrientation(through ? Orientation.UPRIGHT : Orientation.throughBoard(photo.turn()));
    }
  }

  /** Says in its title what the picture is shown for; empty for nothing special. */
  void about(String name) {
    about = name;
    showState();
  }

  /** Shows what lies on the desk now. */
  void refresh() {
    Optional<? extends Picture> now = shown.get();
    filmstrip.refresh();
    ((CardLayout) middle.getLayout()).show(middle, now.isPresent() ? PICTURE : NOTHING);
    Picture before = picture;
    if (now.isEmpty()) {
      picture = null;
      canvas.clear();
    } else if (before == null || !before.equals(now.get())) {
      lay(now.get());
    }
    remark();
  }

  private void lay(Picture laid) {
    canvas.source().ifPresent(old -> old.removeListener(heard));
    picture = laid;
    PictureSource source = scene.shelf().of(laid);
    ViewState remembered = seen.get(laid.id());
    canvas.show(source, remembered == null ? Orientation.UPRIGHT : remembered.orientation());
    if (remembered != null) {
      canvas.setView(remembered);
    }
    source.addListener(heard);
    SessionPointer own = new SessionPointer(session, views, laid.id(), this::preview);
    hand = own;
    canvas.setTool(own);
  }

  /** Paints the marks and zones as they are now. */
  void remark() {
    filmstrip.remark();
    Picture laid = picture;
    if (laid != null) {
      marks = scene.marksOn(laid.id());
      HazardOverlay hazards = new HazardOverlay(scene.zonesOn(laid.id()));
      labels = scene.labelsOn(laid.id()).keepingOff(marks::plates, hazards::plates);
      canvas.setHazards(hazards);
      preview(List.of());
    }
    showState();
  }

  /** Lays what is half done over the marks. */
  private void preview(List<Overlay> changed) {
    Picture laid = picture;
    if (laid != null) {
      List<Overlay> overlays = new ArrayList<>();
      layer.ifPresent(overlays::add);
      overlays.add(marks);
      overlays.add(labels);
      overlays.add(scene.ghostsOn(laid.id()));
      Optional.ofNullable(hand).map(SessionPointer::halfDone).ifPresent(overlays::addAll);
      overlays.addAll(changed);
      canvas.setOverlays(overlays);
    }
  }

  /** Lays another photo over this one, beneath marks and hazard zones; or takes it away. */
  void lay(Optional<LayerOverlay> other) {
    layer = other;
    preview(List.of());
    showState();
  }

  /** The picture that lies there. */
  Optional<PictureId> laid() {
    return Optional.ofNullable(picture).map(Picture::id);
  }

  boolean isShown(PictureId id) {
    return picture != null && picture.id().equals(id);
  }

  /** Looks at the picture as it was looked at before. */
  void lookAs(SavedView.Spot spot) {
    canvas.setOrientation(spot.orientation());
    Runnable look = () -> canvas.look(spot.centre(), spot.scale());
    Optional<ViewState> now = canvas.view();
    double wide = now.map(ViewState::width).orElse(UNSEEN) / spot.scale();
    double high = now.map(ViewState::height).orElse(UNSEEN) / spot.scale();
    Point middle = spot.centre();
    session.approach(
        spot.picture(),
        Box.around(List.of(middle.plus(-wide / 2, -high / 2), middle.plus(wide / 2, high / 2))),
        now.map(view -> spot.scale() / view.fitScale()).orElse(Double.MAX_VALUE),
        look);
  }

  private void viewChanged(ViewState view) {
    if (picture != null) {
      seen.put(picture.id(), view);
    }
    showState();
  }

  private void showState() {
    Picture laid = picture;
    if (laid == null) {
      title.setText(" ");
      state.setText("");
      return;
    }
    boolean through = canvas.view().filter(view -> view.orientation().mirrored()).isPresent();
    String name = DisplayNames.caption(session.map(), laid);
    String caption = about.isEmpty() ? name : about + " \u00b7 " + name;
    String text = through ? caption + " \u00b7 " + Messages.of("photo.mirrored") : caption;
    title.setText(
        layer
            .map(over -> text + " \u00b7 " + Messages.of("layer.over", over.share()))
            .orElse(text));
    state.setText(stateOf(laid));
  }

  private String stateOf(Picture laid) {
    PictureStatus status = scene.shelf().of(laid).status();
    if (status instanceof PictureStatus.InProgress loading) {
      return Messages.of("picture.loading", laid.caption(), loading.fraction());
    }
    if (status instanceof PictureStatus.Failed failed) {
      return failed.reason();
    }
    List<String> words = new ArrayList<>();
    if (laid instanceof Photo) {
      int zones = scene.zonesOn(laid.id()).size();
      boolean apart = session.document().carrier().on(laid.id()).isEmpty();
      String none = apart && scene.isOfUnit(laid.id()) ? "zones.apart" : "zones.none";
      words.add(zones == 0 ? Messages.of(none) : Messages.of("zones.some", zones));
    }
    canvas
        .view()
        .ifPresent(
            view ->
                words.add(
                    Messages.of(
                        "picture.zoom", view.scale() / scene.shelf().of(laid).actualScale())));
    return String.join("   ", words);
  }

  /** The hazard zones that were drawn on the picture shown. */
  List<HazardZone> zones() {
    return picture == null ? List.of() : scene.ownZonesOn(picture.id());
  }

  /** Brings a place into view, if its picture is the one shown here. */
  void look(ViewRequest look) {
    Picture laid = picture;
    if (laid == null || !laid.id().equals(look.picture())) {
      return;
    }
    Optional<ViewRequest.Spot> from = look.comeFrom();
    Optional<ViewState> was = from.map(ViewRequest.Spot::picture).map(seen::get);
    if (from.isPresent() && was.isPresent()) {
      canvas.view().ifPresent(now -> canvas.setView(at(now, look, was.get(), from.get())));
    } else if (look.closer()) {
      canvas.nearTo(Box.around(look.extent()));
    } else {
      canvas.reveal(Box.around(look.extent()));
    }
  }

  /** The place at the same spot of the screen where the other was, as large as that was. */
  private static ViewState at(
      ViewState now, ViewRequest look, ViewState was, ViewRequest.Spot from) {
    ScreenPoint eye = was.toScreen(from.at());
    ViewState there = now.centredOn(look.at(), was.scale());
    if (eye.x() < 0 || eye.y() < 0 || eye.x() > was.width() || eye.y() > was.height()) {
      return there;
    }
    ScreenPoint place = there.toScreen(look.at());
    return there.pannedBy(eye.x() - place.x(), eye.y() - place.y());
  }
}
