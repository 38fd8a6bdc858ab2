package org.relegend.viewer.ui;

import java.awt.event.ActionEvent;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.KeyStroke;
import org.relegend.map.Evidence;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.ZoneId;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Tool;
import org.relegend.viewer.view.ViewState;

/** What each act does in one window. */
final class Deeds {
  private static final Set<Act> WITHOUT_MAP =
      EnumSet.of(
          Act.NEW,
          Act.OPEN,
          Act.DEMO,
          Act.ADD_PAGE, // says that a map is needed first
          Act.ADD_PHOTO,
          Act.QUIT,
          Act.NEW_WINDOW,
          Act.SYSTEM,
          Act.LIGHT,
          Act.DARK,
          Act.SHORTCUTS,
          Act.CAUTIONS);

  private final ViewerWindow window;
  private final Program program;
  private final Acts acts;

  Deeds(ViewerWindow window, Program program, Acts acts) {
    this.window = window;
    this.program = program;
    this.acts = acts;
  }

  /** Whether the act makes sense while no map is open. */
  static boolean needsNoMap(Act act) {
    return WITHOUT_MAP.contains(act);
  }

  void bind() {
    bindFile();
    bindEdit();
    bindMark();
    bindGo();
    bindView();
    bindJob();
    secondKey("ctrl shift Z", Act.REDO);
    secondKey("typed /", Act.FIND);
    secondKey("typed ?", Act.SHORTCUTS);
  }

  private void bindFile() {
    MapFiles files = window.files();
    acts.on(Act.NEW, files::makeNew);
    acts.on(Act.OPEN, files::chooseAndOpen);
    acts.on(Act.DEMO, () -> program.demo().ifPresent(files::openDemo));
    acts.on(Act.NEW_WINDOW, () -> program.openWindow(Optional.empty()));
    acts.on(Act.ADD_PAGE, window.adding()::choosePages);
    acts.on(Act.ADD_PHOTO, window.adding()::choosePhotos);
    acts.on(Act.PACK, new PackGiving(window, program)::ask);
    acts.on(Act.SAVE, () -> window.sitting().ifPresent(sitting -> sitting.keeping().save()));
    acts.on(Act.CLOSE, () -> window.leave(window::showStart));
    acts.on(Act.QUIT, () -> program.windows().forEach(ViewerWindow::close));
    onSession(Act.AUTHOR, this::askAuthor);
  }

  private void askAuthor(Session session) {
    String name =
        (String)
            JOptionPane.showInputDialog(
                window,
                Texts.of("author.text"),
                Texts.of("author.title"),
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
    acts.on(Act.NEW_JOB, window.files()::makeJob);
    acts.on(Act.PRINT, new Printing(window, program)::ask);
    acts.on(Act.READ, () -> panel().ifPresent(WorkPanel::read));
    onJob(Act.METER, session -> JobDeeds.meter(window, session));
    onJob(Act.LIFTED, session -> session.bench().setLifted(!session.bench().isLifted()));
    onJob(Act.LIMIT, session -> JobDeeds.limit(window, session));
    onJob(Act.UNIT_PHOTO, session -> photoCentre().ifPresent(session::flipToUnit));
    onJob(Act.CLOSE_UP, session -> JobDeeds.closeUp(window, session));
    onJob(Act.REMOVE_UNIT_PHOTO, Deeds::removeUnitPhoto);
    onJob(Act.DIFFERENCES, session -> show(JobLists.DIFFERENCES));
    onJob(Act.SUSPECTS, session -> show(JobLists.SUSPECTS));
    onSession(Act.CONDITION, session -> session.conditions().ask());
    onJob(Act.CONDITIONS, session -> show(JobLists.CONDITIONS));
    onJob(Act.HYPOTHESIS, session -> JobDeeds.hypothesis(window, session));
    onJob(Act.HYPOTHESES, session -> show(JobLists.HYPOTHESES));
    onJob(Act.LOG, session -> JobDeeds.log(window, session));
    onJob(Act.CHECKLIST, session -> JobDeeds.checklist(window, session));
    onJob(Act.INTAKE, session -> JobDeeds.intake(window, session));
  }

  private void show(String list) {
    panel().ifPresent(open -> open.toggleList(list));
  }

  /** What only makes sense with a job; without one, that is said. */
  private void onJob(Act act, Consumer<Session> deed) {
    onSession(
        act,
        session -> {
          if (session.bench().isOpen()) {
            deed.accept(session);
          } else {
            session.bench().sayNoJob();
          }
        });
  }

  private void bindEdit() {
    onSession(Act.UNDO, Session::undo);
    onSession(Act.REDO, Session::redo);
    onSession(Act.CONFIRM, Deeds::confirm);
    acts.on(Act.ACCEPT_ALL, () -> panel().ifPresent(p -> p.twins().acceptAll()));
    acts.on(Act.REJECT_ALL, () -> panel().ifPresent(p -> p.twins().rejectAll()));
    onSession(Act.TAKE_AWAY, Deeds::takeAway);
    onSession(Act.CHANGE, session -> EntryForms.change(window, session));
    onSession(Act.CHANGE_PART, session -> EntryForms.changePart(window, session));
    onSession(Act.REMOVE, session -> session.entries().askRemove());
    onSession(
        Act.CHANGE_ZONE,
        session -> zone("changezone.which", Act.CHANGE_ZONE).ifPresent(session::changeZone));
    onSession(
        Act.REMOVE_ZONE,
        session -> zone("removezone.which", Act.REMOVE_ZONE).ifPresent(session::removeZone));
    nudge(Act.NUDGE_LEFT, -1, 0);
    nudge(Act.NUDGE_RIGHT, 1, 0);
    nudge(Act.NUDGE_UP, 0, -1);
    nudge(Act.NUDGE_DOWN, 0, 1);
  }

  private static void confirm(Session session) {
    if (session.ghosts().chosen().isPresent()) {
      session.ghosts().accept();
    } else {
      session.corrections().confirm();
    }
  }

  private static void takeAway(Session session) {
    if (session.tool() == Tool.LINE_UP) {
      session.pairing().takeAway();
    } else if (session.ghosts().chosen().isPresent()) {
      session.ghosts().reject();
    } else {
      session.corrections().takeAway();
    }
  }

  /** The one hazard zone drawn on the picture, or which of them, if it has several. */
  private Optional<ZoneId> zone(String which, Act act) {
    Map<String, ZoneId> zones = new LinkedHashMap<>();
    panel().ifPresent(open -> open.zones().forEach((zone, name) -> zones.put(name, zone)));
    if (zones.size() < 2) {
      if (zones.isEmpty()) {
        panel().ifPresent(WorkPanel::sayNoZone);
      }
      return zones.values().stream().findFirst();
    }
    Object chosen =
        JOptionPane.showInputDialog(
            window,
            Texts.of(which),
            act.text(),
            JOptionPane.PLAIN_MESSAGE,
            null,
            zones.keySet().toArray(),
            zones.keySet().iterator().next());
    return Optional.ofNullable(chosen).map(zones::get);
  }

  /** One pixel of the screen, on the picture where the marked places are. */
  private void nudge(Act act, int dx, int dy) {
    onSession(
        act,
        session -> {
          Optional<PictureId> picture =
              session.selection().marked().stream().map(Placement.Key::picture).findFirst();
          Optional<ViewState> view = panel().flatMap(p -> p.active().canvas().view());
          double unit = view.map(seen -> 1 / seen.scale()).orElse(1.0);
          picture.ifPresent(on -> session.corrections().move(on, dx * unit, dy * unit));
        });
  }

  private void bindMark() {
    onSession(Act.BACK, Session::back);
    take(Act.PLACE, Tool.PLACE);
    take(Act.PINS, Tool.PINS);
    take(Act.TRACE, Tool.TRACE);
    onSession(Act.TWIN_IS, session -> session.twinning().ask());
    take(Act.ZONE, Tool.ZONE);
    take(Act.MEASURE, Tool.MEASURE);
    take(Act.STRAIGHTEN, Tool.STRAIGHTEN);
    take(Act.LINE_UP, Tool.LINE_UP);
    onSession(Act.LINE_UP_PAGES, Session::lineUpPages);
    acts.on(Act.LINE_UP_ALONE, () -> panel().ifPresent(WorkPanel::lineUpAlone));
    for (Evidence evidence : Evidence.values()) {
      onSession(TopBar.actOf(evidence), session -> session.hand().setEvidence(evidence));
    }
  }

  private void take(Act act, Tool tool) {
    acts.on(act, () -> panel().ifPresent(open -> open.take(tool)));
  }

  private void bindGo() {
    acts.on(Act.FIND, () -> panel().ifPresent(WorkPanel::typeName));
    onSession(Act.NEXT_CARD, session -> session.walk(1));
    onSession(Act.PREVIOUS_CARD, session -> session.walk(-1));
    onSession(Act.FIRST_CARD, session -> session.walkTo(0));
    onSession(Act.LAST_CARD, session -> session.walkTo(Integer.MAX_VALUE));
    acts.on(Act.OPEN_CARD, () -> panel().ifPresent(WorkPanel::enter));
    onSession(Act.TWIN, Session::twin);
    acts.on(Act.TWINS, () -> panel().ifPresent(p -> p.twins().toggleTwins()));
    acts.on(Act.GHOSTS, () -> panel().ifPresent(p -> p.twins().toggleGhosts()));
    acts.on(Act.NEXT_PHOTO, () -> panel().ifPresent(p -> p.photo().filmstrip().step(1)));
    acts.on(Act.PREVIOUS_PHOTO, () -> panel().ifPresent(p -> p.photo().filmstrip().step(-1)));
    acts.on(Act.NEXT_PAGE, () -> panel().ifPresent(p -> p.page().filmstrip().step(1)));
    acts.on(Act.PREVIOUS_PAGE, () -> panel().ifPresent(p -> p.page().filmstrip().step(-1)));
    acts.on(Act.NEXT_AREA, () -> panel().ifPresent(p -> p.nextArea(1)));
    acts.on(Act.PREVIOUS_AREA, () -> panel().ifPresent(p -> p.nextArea(-1)));
    acts.on(Act.FINDINGS, () -> panel().ifPresent(WorkPanel::toggleFindings));
    acts.on(Act.CLASHES, () -> panel().ifPresent(WorkPanel::showClashes));
    acts.on(Act.TRUST, () -> panel().ifPresent(WorkPanel::showTrust));
    onSession(Act.FLIP, session -> photoCentre().ifPresent(session::flip));
    acts.on(Act.CAUTIONS, () -> CautionDialog.showAll(window));
    acts.on(Act.SHORTCUTS, () -> ShortcutSheet.show(window));
  }

  private void bindView() {
    onSession(Act.LINK, session -> session.desk().setLinked(!session.desk().isLinked()));
    onSession(Act.BESIDE, session -> session.comparing().toggle());
    canvas(Act.ZOOM_IN, "zoom-in");
    canvas(Act.ZOOM_OUT, "zoom-out");
    canvas(Act.FIT, "fit");
    canvas(Act.ACTUAL, "actual-size");
    canvas(Act.LOUPE, "loupe");
    acts.on(Act.THROUGH, () -> panel().ifPresent(p -> p.photo().seeThrough()));
    acts.on(Act.LAY_OVER, () -> panel().ifPresent(WorkPanel::layOver));
    acts.on(Act.TURN, () -> panel().ifPresent(p -> p.active().turn()));
    acts.on(
        Act.CLEAN, () -> panel().ifPresent(p -> CleanUpDialog.show(window, p.active().canvas())));
    acts.on(Act.SYSTEM, () -> program.setTheme(Theme.SYSTEM));
    acts.on(Act.LIGHT, () -> program.setTheme(Theme.LIGHT));
    acts.on(Act.DARK, () -> program.setTheme(Theme.DARK));
    acts.select(Act.valueOf(program.settings().theme().name()), true);
  }

  private Optional<Point> photoCentre() {
    return panel().flatMap(open -> open.photo().canvas().view()).map(ViewState::centre);
  }

  private static void removeUnitPhoto(Session session) {
    boolean removed =
        session.desk().photo().filter(own -> session.unitPhotos().remove(own.id())).isPresent();
    if (!removed) {
      session.unitPhotos().sayNone();
    }
  }

  private void canvas(Act act, String action) {
    acts.on(act, () -> panel().ifPresent(p -> p.active().act(action)));
  }

  private Optional<WorkPanel> panel() {
    return window.sitting().map(Sitting::panel);
  }

  private void onSession(Act act, Consumer<Session> deed) {
    acts.on(act, () -> window.sitting().ifPresent(sitting -> deed.accept(sitting.session())));
  }

  private void secondKey(String key, Act act) {
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
