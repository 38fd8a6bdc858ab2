package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import org.relegend.viewer.control.Actions;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.OpenedPictures;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.mode.Modes;
import org.relegend.viewer.mode.bench.JobAutosave;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.mode.check.CheckRunner;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.TaskRunner;

/** One window of the program: the start page, or an open map. */
final class ViewerWindow extends MapWindow {
  private static final int STEP = 28;

  private final Program program;
  private final Actions acts = new Actions();
  private final Menus menus = new Menus(acts);
  private final JPanel content = new JPanel(new BorderLayout());
  private final StartPanel start;
  private final MapFiles files;
  private final UnsavedMap unsaved;
  private final PictureImport adding;
  private final PackImport packs;
  private final TaskRunner keep = new TaskRunner("keep", 1, SwingUtilities::invokeLater);
  private final TaskRunner search = new TaskRunner("search", 1, SwingUtilities::invokeLater);
  private final TaskRunner slow = new TaskRunner("slow", 1, SwingUtilities::invokeLater);
  private @Nullable OpenMap sitting;

  ViewerWindow(Program program) {
    super(Messages.of("app.name"));
    this.program = program;
    files = new MapFiles(this, program);
    unsaved = new UnsavedMap(this, program, files::open);
    adding = new PictureImport(this, program);
    packs = new PackImport(this, program);
    start = new StartPanel(acts, this::open);
    setJMenuBar(menus.bar());
    content.add(banner(), BorderLayout.NORTH);
    setContentPane(content);
    setMinimumSize(new Dimension(760, 560));
    setSize(1280, 860);
    place();
    setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
    addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            close();
          }

          @Override
          public void windowActivated(WindowEvent event) {
            program.followSystem();
            sitting().ifPresent(sitting -> sitting.keeping().lookAtDisk());
          }
        });
    new ActionBindings(this, files, adding, program).bind();
    setTransferHandler(new DropTarget(this, adding));
    showStart();
  }

  /** In the middle of the screen, each further window a little lower than the one before. */
  private void place() {
    setLocationRelativeTo(null);
    int step = STEP * program.windows().size();
    setLocation(getX() + step, getY() + step);
  }

  @Override
  Optional<OpenMap> sitting() {
    return Optional.ofNullable(sitting);
  }

  @Override
  Actions acts() {
    return acts;
  }

  /** Brings pages and photos into the open map. */
  PictureImport adding() {
    return adding;
  }

  @Override
  void openThen(Path folder, Runnable then) {
    files.openInstead(folder, then);
  }

  @Override
  void takePack(Path file) {
    packs.take(file);
  }

  @Override
  void leave(Runnable then) {
    OpenMap open = sitting;
    if (open == null) {
      then.run();
    } else {
      // what would be edited from now on might come too late for the save
      open.session().document().setReadOnly(true);
      open.keeping().flush(() -> leaveSaved(open, then));
    }
  }

  private void leaveSaved(OpenMap open, Runnable then) {
    MapAutosave.State reached = open.keeping().state();
    boolean differs =
        reached instanceof MapAutosave.State.Failed
            || reached instanceof MapAutosave.State.ChangedOnDisk;
    if (differs && open.keeping().hasUnsaved() && unsaved.staysUnsaved(reached)) {
      open.session().document().setReadOnly(open.folder().readOnly());
      return;
    }
    adding.forget();
    open.checking().stop();
    open.remembering().stop();
    open.job()
        .ifPresentOrElse(
            job -> job.release(() -> files.release(open, then)), () -> files.release(open, then));
  }

  /** Those that the map's dangers call for, once for each map; then what is next. */
  private void cautionFirst(OpenMap open, Runnable next) {
    BoardMap map = open.session().map();
    if (program.settings().hasReadCautions(map.id())) {
      next.run();
      return;
    }
    FirstCaution.run(
        program.jobs(),
        map,
        called -> {
          if (sitting().map(OpenMap::session).filter(open.session()::equals).isPresent()) {
            if (called && CautionDialog.showFirst(this)) {
              program.settings().readCautions(map.id());
            }
            next.run();
          }
        });
  }

  @Override
  void sit(OpenedFolder opened) {
    MapFolder folder = opened.map();
    Session session =
        new Session(folder.history(), program.owner(), program.clock(), Modes.rooms());
    session.hand().setAuthor(program.settings().author());
    session.hand().setEvidence(program.settings().evidence());
    session.document().setReadOnly(folder.readOnly());
    OpenedPictures shelf = new OpenedPictures(program.library(), folder.path());
    MapPanel panel = new MapPanel(session, shelf, acts, search, slow);
    MapAutosave keeping = new MapAutosave(folder, keep, state -> unsaved.showState(panel, state));
    session.document().add(keeping);
    CheckRunner checking =
        new CheckRunner(session, folder, program.jobs(), panel.lower()::showFindings);
    Optional<JobAutosave> job =
        opened.job().map(over -> new JobAutosave(over, keep, this::jobNotKept));
    SavedViewWriter remembering =
        new SavedViewWriter(
            session, panel, keep, SavedViewWriter.fileOfMap(program.notes(), folder.path()));
    panel.lower().onChange(remembering::listChanged);
    OpenMap sat = new OpenMap(folder, session, keeping, checking, panel, remembering, job);
    sitting = sat;
    job.ifPresent(kept -> lay(kept, sat));
    program.settings().opened(opened.job().map(over -> over.path()).orElse(folder.path()));
    session.listen(change -> follow(session, change));
    session.listen(
        change -> {
          if (change == Change.MAP) {
            checking.soon();
          }
        });
    checking.soon();
    show(panel);
    setTitle(title(session));
    unsaved.showState(panel, keeping.state());
    files.tell(opened);
    refreshActions(session);
    SwingUtilities.invokeLater(panel::typeName);
    SwingUtilities.invokeLater(() -> cautionFirst(sat, () -> remembering.goBack(opened.before())));
  }

  private static void lay(JobAutosave kept, OpenMap sat) {
    sat.panel().photosOfUnitIn(kept.folder().path());
    sat.remembering().over(kept.folder().path());
    sat.session()
        .room(OpenJob.class)
        .lay(kept.folder().job(), kept.folder().readOnly(), kept::keep);
  }

  @Override
  void layOver(org.relegend.store.JobFolder made) {
    OpenMap open = sitting;
    if (open == null) {
      return;
    }
    JobAutosave kept = new JobAutosave(made, keep, this::jobNotKept);
    sitting =
        new OpenMap(
            open.folder(),
            open.session(),
            open.keeping(),
            open.checking(),
            open.panel(),
            open.remembering(),
            Optional.of(kept));
    lay(kept, open);
    program.settings().opened(made.path());
    setTitle(title(open.session()));
  }

  private static String title(Session session) {
    String map = session.map().info().title();
    return Messages.of(
        "app.title",
        session
            .room(OpenJob.class)
            .job()
            .map(job -> Messages.of("job.title", job.id(), map))
            .orElse(map));
  }

  private void jobNotKept(Throwable problem) {
    banner()
        .say(
            Messages.of(
                "banner.failed",
                problem instanceof StoreException
                    ? String.valueOf(problem.getMessage())
                    : problem.toString()),
            java.util.List.of(new Banner.Choice(Messages.of("banner.dismiss"), () -> {})));
  }

  private void follow(Session session, Change change) {
    switch (change) {
      case EVIDENCE -> program.settings().setEvidence(session.hand().evidence());
      case MAP, PICTURES, RIGHTS, JOB -> refreshActions(session);
      default -> {}
    }
  }

  /** Which acts make sense now, and what undo and redo would do. */
  private void refreshActions(Session session) {
    Optional<String> undo =
        session.room(OpenJob.class).undoLabel().or(() -> session.document().undoLabel());
    Optional<String> redo =
        session.room(OpenJob.class).redoLabel().or(() -> session.document().redoLabel());
    acts.rename(
        UserAction.UNDO,
        undo.map(l -> Messages.of("act.undo.named", l)).orElse(UserAction.UNDO.text()));
    acts.rename(
        UserAction.REDO,
        redo.map(l -> Messages.of("act.redo.named", l)).orElse(UserAction.REDO.text()));
    acts.enable(UserAction.UNDO, undo.isPresent());
    acts.enable(UserAction.REDO, redo.isPresent());
    acts.select(UserAction.LINK, session.desk().isLinked());
  }

  @Override
  void showStart() {
    sitting = null;
    banner().close();
    setTitle(Messages.of("app.name"));
    List<Path> recent = program.settings().recent();
    start.refresh(recent, program.demo().isPresent());
    show(start);
  }

  private void show(JPanel middle) {
    content.removeAll();
    content.add(banner(), BorderLayout.NORTH);
    content.add(middle, BorderLayout.CENTER);
    boolean open = sitting != null;
    for (UserAction act : UserAction.values()) {
      acts.enable(act, open || ActionBindings.needsNoMap(act));
    }
    showRecent();
    content.revalidate();
    content.repaint();
  }

  private void showRecent() {
    menus.recent().removeAll();
    for (Path folder : program.settings().recent()) {
      JMenuItem item = new JMenuItem(folder.toString());
      item.addActionListener(pressed -> open(folder));
      menus.recent().add(item);
    }
    menus.recent().setEnabled(menus.recent().getItemCount() > 0);
    acts.enable(UserAction.DEMO, program.demo().isPresent());
  }

  @Override
  void close() {
    leave(
        () -> {
          sitting = null;
          dispose();
          keep.close();
          search.close();
          slow.close();
          program.closed(this);
        });
  }
}
