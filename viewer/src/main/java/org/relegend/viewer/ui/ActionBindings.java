package org.relegend.viewer.ui;

import java.awt.event.ActionEvent;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.KeyStroke;
import org.relegend.map.Evidence;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.ZoneId;
import org.relegend.viewer.control.Actions;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.mode.bench.ConditionEditor;
import org.relegend.viewer.mode.bench.JobDialogs;
import org.relegend.viewer.mode.bench.JobListPanel;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.mode.bench.UnitPhotoEditor;
import org.relegend.viewer.mode.edit.EntryEditor;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.mode.lineup.LineUpView;
import org.relegend.viewer.mode.look.OtherSide;
import org.relegend.viewer.mode.twins.ChannelComparison;
import org.relegend.viewer.mode.twins.PredictedPlaces;
import org.relegend.viewer.mode.twins.TwinJump;
import org.relegend.viewer.mode.twins.TwinTool;
import org.relegend.viewer.mode.zone.ZoneTool;
import org.relegend.viewer.session.PlacementCorrections;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.view.ViewState;

/** What each act does in one window. */
final class ActionBindings {
  private static final Set<UserAction> WITHOUT_MAP =
      EnumSet.of(
          UserAction.NEW,
          UserAction.OPEN,
          UserAction.DEMO,
          UserAction.ADD_PAGE, // says that a map is needed first
          UserAction.ADD_PHOTO,
          UserAction.QUIT,
          UserAction.NEW_WINDOW,
          UserAction.SYSTEM,
          UserAction.LIGHT,
          UserAction.DARK,
          UserAction.SHORTCUTS,
          UserAction.CAUTIONS);

  private final MapWindow window;
  private final MapFiles files;
  private final PictureImport adding;
  private final Program program;
  private final Actions acts;

  ActionBindings(MapWindow window, MapFiles files, PictureImport adding, Program program) {
    this.window = window;
    this.files = files;
    this.adding = adding;
    this.program = program;
    this.acts = window.acts();
  }

  /** Whether the act makes sense while no map is open. */
  static boolean needsNoMap(UserAction act) {
    return WITHOUT_MAP.contains(act);
  }

  void bind() {
    bindFile();
    bindEdit();
    bindMark();
    bindGo();
    bindView();
    bindJob();
    secondKey("ctrl shift Z", UserAction.REDO);
    secondKey("typed /", UserAction.FIND);
    secondKey("typed ?", UserAction.SHORTCUTS);
  }

  private void bindFile() {
    acts.on(UserAction.NEW, files::makeNew);
    acts.on(UserAction.OPEN, files::chooseAndOpen);
    acts.on(UserAction.DEMO, () -> program.demo().ifPresent(files::openDemo));
    acts.on(UserAction.NEW_WINDOW, () -> program.openWindow(Optional.empty()));
    acts.on(UserAction.ADD_PAGE, adding::choosePages);
    acts.on(UserAction.ADD_PHOTO, adding::choosePhotos);
    acts.on(UserAction.PACK, new PackExport(window, program)::ask);
    acts.on(UserAction.SAVE, () -> window.sitting().ifPresent(sitting -> sitting.keeping().save()));
    acts.on(UserAction.CLOSE, () -> window.leave(window::showStart));
    acts.on(UserAction.QUIT, () -> program.windows().forEach(MapWindow::close));
    onSession(UserAction.AUTHOR, this::askAuthor);
  }

  private void askAuthor(Session session) {
    String name =
        (String)
            JOptionPane.showInputDialog(
                window,
                Messages.of("author.text"),
                Messages.of("author.title"),
                JOptionPane.PLAIN_MESSAGE,
                null,
                null,
                session.hand().author());
    if (name != null) {
      session.hand().setAuthor(name.strip());
      program.settings().setAuthor(name.strip());
    }
  }

  private void bindJob() {
    acts.on(UserAction.NEW_JOB, files::makeJob);
    acts.on(UserAction.PRINT, new SheetPrint(window, program)::ask);
    acts.on(UserAction.READ, () -> panel().ifPresent(MapPanel::read));
    onJob(UserAction.METER, session -> JobDialogs.meter(window, session));
    onJob(
        UserAction.LIFTED,
        session -> session.room(OpenJob.class).setLifted(!session.room(OpenJob.class).isLifted()));
    onJob(UserAction.LIMIT, session -> JobDialogs.limit(window, session));
    onJob(
        UserAction.UNIT_PHOTO,
        session -> photoCentre().ifPresent(session.room(OtherSide.class)::toUnit));
    onJob(UserAction.CLOSE_UP, session -> JobDialogs.closeUp(window, session));
    onJob(UserAction.REMOVE_UNIT_PHOTO, ActionBindings::removeUnitPhoto);
    onJob(UserAction.DIFFERENCES, session -> show(JobListPanel.DIFFERENCES));
    onJob(UserAction.SUSPECTS, session -> show(JobListPanel.SUSPECTS));
    onSession(UserAction.CONDITION, session -> session.room(ConditionEditor.class).ask());
    onJob(UserAction.CONDITIONS, session -> show(JobListPanel.CONDITIONS));
    onJob(UserAction.HYPOTHESIS, session -> JobDialogs.hypothesis(window, session));
    onJob(UserAction.HYPOTHESES, session -> show(JobListPanel.HYPOTHESES));
    onJob(UserAction.LOG, session -> JobDialogs.log(window, session));
    onJob(UserAction.CHECKLIST, session -> JobDialogs.checklist(window, session));
    onJob(UserAction.INTAKE, session -> JobDialogs.intake(window, session));
  }

  private void show(String list) {
    panel().ifPresent(open -> open.lower().toggleList(list));
  }

  /** What only makes sense with a job; without one, that is said. */
  private void onJob(UserAction act, Consumer<Session> deed) {
    onSession(
        act,
        session -> {
          if (session.room(OpenJob.class).isOpen()) {
            deed.accept(session);
          } else {
            session.room(OpenJob.class).sayNoJob();
          }
        });
  }

  private void bindEdit() {
    onSession(UserAction.UNDO, Session::undo);
    onSession(UserAction.REDO, Session::redo);
    onSession(UserAction.CONFIRM, ActionBindings::confirm);
    acts.on(UserAction.ACCEPT_ALL, () -> panel().ifPresent(p -> p.twins().acceptAll()));
    acts.on(UserAction.REJECT_ALL, () -> panel().ifPresent(p -> p.twins().rejectAll()));
    onSession(UserAction.TAKE_AWAY, ActionBindings::takeAway);
    onSession(UserAction.CHANGE, session -> EntryForms.change(window, session));
    onSession(UserAction.CHANGE_PART, session -> EntryForms.changePart(window, session));
    onSession(UserAction.REMOVE, session -> session.room(EntryEditor.class).askRemove());
    onSession(
        UserAction.CHANGE_ZONE,
        session ->
            zone("changezone.which", UserAction.CHANGE_ZONE)
                .ifPresent(session.room(ZoneTool.class)::askChange));
    onSession(
        UserAction.REMOVE_ZONE,
        session ->
            zone("removezone.which", UserAction.REMOVE_ZONE)
                .ifPresent(session.room(ZoneTool.class)::askRemove));
    nudge(UserAction.NUDGE_LEFT, -1, 0);
    nudge(UserAction.NUDGE_RIGHT, 1, 0);
    nudge(UserAction.NUDGE_UP, 0, -1);
    nudge(UserAction.NUDGE_DOWN, 0, 1);
  }

  private static void confirm(Session session) {
    if (session.room(PredictedPlaces.class).chosen().isPresent()) {
      session.room(PredictedPlaces.class).accept();
    } else {
      session.room(PlacementCorrections.class).confirm();
    }
  }

  private static void takeAway(Session session) {
    if (session.mode().takeAway()) {
      return;
    }
    if (session.room(PredictedPlaces.class).chosen().isPresent()) {
      session.room(PredictedPlaces.class).reject();
    } else {
      session.room(PlacementCorrections.class).takeAway();
    }
  }

  /** The one hazard zone drawn on the picture, or which of them, if it has several. */
  private Optional<ZoneId> zone(String which, UserAction act) {
    Map<String, ZoneId> zones = new LinkedHashMap<>();
    panel().ifPresent(open -> open.zones().forEach((zone, name) -> zones.put(name, zone)));
    if (zones.size() < 2) {
      if (zones.isEmpty()) {
        panel().ifPresent(MapPanel::sayNoZone);
      }
      return zones.values().stream().findFirst();
    }
    Object chosen =
        JOptionPane.showInputDialog(
            window,
            Messages.of(which),
            act.text(),
            JOptionPane.PLAIN_MESSAGE,
            null,
            zones.keySet().toArray(),
            zones.keySet().iterator().next());
    return Optional.ofNullable(chosen).map(zones::get);
  }

  /** One pixel of the screen, on the picture where the marked places are. */
  private void nudge(UserAction act, int dx, int dy) {
    onSession(
        act,
        session -> {
          Optional<PictureId> picture =
              session.selection().marked().stream().map(Placement.Key::picture).findFirst();
          Optional<ViewState> view = panel().flatMap(p -> p.active().canvas().view());
          double unit = view.map(seen -> 1 / seen.scale()).orElse(1.0);
          picture.ifPresent(
              on -> session.room(PlacementCorrections.class).move(on, dx * unit, dy * unit));
        });
  }

  private void bindMark() {
    Stream.of(UserAction.values())
        .filter(action -> action.group() == UserAction.Group.MARK)
        .forEach(this::take);
    onSession(UserAction.BACK, Session::back);
    onSession(UserAction.TWIN_IS, session -> session.room(TwinTool.class).ask());
    onSession(UserAction.LINE_UP_PAGES, session -> session.room(LineUpTool.class).takePages());
    acts.on(
        UserAction.LINE_UP_ALONE,
        () -> panel().ifPresent(open -> open.view(LineUpView.class).alone()));
    for (Evidence evidence : Evidence.values()) {
      onSession(TopBar.actOf(evidence), session -> session.hand().setEvidence(evidence));
    }
  }

  /** What takes a mode in hand; the others of that menu are bound anew. */
  private void take(UserAction act) {
    acts.on(act, () -> panel().ifPresent(open -> open.take(act)));
  }

  private void bindGo() {
    acts.on(UserAction.FIND, () -> panel().ifPresent(MapPanel::typeName));
    onSession(UserAction.NEXT_CARD, session -> session.walk().by(1));
    onSession(UserAction.PREVIOUS_CARD, session -> session.walk().by(-1));
    onSession(UserAction.FIRST_CARD, session -> session.walk().to(0));
    onSession(UserAction.LAST_CARD, session -> session.walk().to(Integer.MAX_VALUE));
    acts.on(UserAction.OPEN_CARD, () -> panel().ifPresent(MapPanel::enter));
    onSession(UserAction.TWIN, session -> session.room(TwinJump.class).jump());
    acts.on(UserAction.TWINS, () -> panel().ifPresent(p -> p.twins().toggleTwins()));
    acts.on(UserAction.GHOSTS, () -> panel().ifPresent(p -> p.twins().toggleGhosts()));
    acts.on(UserAction.NEXT_PHOTO, () -> panel().ifPresent(p -> p.photo().filmstrip().step(1)));
    acts.on(
        UserAction.PREVIOUS_PHOTO, () -> panel().ifPresent(p -> p.photo().filmstrip().step(-1)));
    acts.on(UserAction.NEXT_PAGE, () -> panel().ifPresent(p -> p.page().filmstrip().step(1)));
    acts.on(UserAction.PREVIOUS_PAGE, () -> panel().ifPresent(p -> p.page().filmstrip().step(-1)));
    acts.on(UserAction.NEXT_AREA, () -> panel().ifPresent(p -> p.nextArea(1)));
    acts.on(UserAction.PREVIOUS_AREA, () -> panel().ifPresent(p -> p.nextArea(-1)));
    acts.on(UserAction.FINDINGS, () -> panel().ifPresent(open -> open.lower().toggleFindings()));
    acts.on(UserAction.CLASHES, () -> panel().ifPresent(open -> open.lower().showClashes()));
    acts.on(UserAction.TRUST, () -> panel().ifPresent(open -> open.lower().showTrust()));
    onSession(
        UserAction.FLIP, session -> photoCentre().ifPresent(session.room(OtherSide.class)::over));
    acts.on(UserAction.CAUTIONS, () -> CautionDialog.showAll(window));
    acts.on(UserAction.SHORTCUTS, () -> ShortcutSheet.show(window));
  }

  private void bindView() {
    onSession(UserAction.LINK, session -> session.desk().setLinked(!session.desk().isLinked()));
    onSession(UserAction.BESIDE, session -> session.room(ChannelComparison.class).toggle());
    canvas(UserAction.ZOOM_IN, "zoom-in");
    canvas(UserAction.ZOOM_OUT, "zoom-out");
    canvas(UserAction.FIT, "fit");
    canvas(UserAction.ACTUAL, "actual-size");
    canvas(UserAction.LOUPE, "loupe");
    acts.on(UserAction.THROUGH, () -> panel().ifPresent(p -> p.photo().seeThrough()));
    acts.on(UserAction.LAY_OVER, () -> panel().ifPresent(MapPanel::layOver));
    acts.on(UserAction.TURN, () -> panel().ifPresent(p -> p.active().turn()));
    acts.on(
        UserAction.CLEAN,
        () -> panel().ifPresent(p -> CleanUpDialog.show(window, p.active().canvas())));
    acts.on(UserAction.SYSTEM, () -> program.setTheme(Theme.SYSTEM));
    acts.on(UserAction.LIGHT, () -> program.setTheme(Theme.LIGHT));
    acts.on(UserAction.DARK, () -> program.setTheme(Theme.DARK));
    acts.select(UserAction.valueOf(program.settings().theme().name()), true);
  }

  private Optional<Point> photoCentre() {
    return panel().flatMap(open -> open.photo().canvas().view()).map(ViewState::centre);
  }

  private static void removeUnitPhoto(Session session) {
    boolean removed =
        session
            .desk()
            .photo()
            .filter(own -> session.room(UnitPhotoEditor.class).remove(own.id()))
            .isPresent();
    if (!removed) {
      session.room(UnitPhotoEditor.class).sayNone();
    }
  }

  private void canvas(UserAction act, String action) {
    acts.on(act, () -> panel().ifPresent(p -> p.active().act(action)));
  }

  private Optional<MapPanel> panel() {
    return window.sitting().map(OpenMap::panel);
  }

  private void onSession(UserAction act, Consumer<Session> deed) {
    acts.on(act, () -> window.sitting().ifPresent(sitting -> deed.accept(sitting.session())));
  }

  private void secondKey(String key, UserAction act) {
    JComponent root = window.getRootPane();
    root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke(key), key);
    root.getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                acts.run(act);
              }
            });
  }
}
