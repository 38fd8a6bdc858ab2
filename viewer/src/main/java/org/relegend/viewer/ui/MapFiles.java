package org.relegend.viewer.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapInfo;
import org.relegend.map.Picture;
import org.relegend.scan.PictureException;
import org.relegend.share.ShareException;
import org.relegend.share.Unpack;
import org.relegend.store.JobFolder;
import org.relegend.store.JobMap;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import org.relegend.viewer.control.Form;
import org.relegend.viewer.control.Texts;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.mode.bench.JobDialogs;

/** Opening, making and keeping maps on disk, from one window; what takes time runs elsewhere. */
final class MapFiles {
  private final ViewerWindow window;
  private final Program program;

  MapFiles(ViewerWindow window, Program program) {
    this.window = window;
    this.program = program;
  }

  /**
   * Opens a map or a job in the place of what is open. That is closed only once the other is there;
   * where the other can't be opened, that is said, and nothing has changed.
   */
  void openInstead(Path folder, Runnable then) {
    window.saved(
        () -> {
          Optional<Sitting> now = window.sitting();
          program
              .jobs()
              .run(
                  Texts.of("file.opening", folder),
                  watch ->
                      now.isPresent() && isOfOpenMap(folder, now.get())
                          ? Optional.<JobOpening>empty()
                          : Optional.of(JobOpening.of(folder, program.notes())),
                  opened ->
                      window.leave(
                          () ->
                              opened.ifPresentOrElse(
                                  other -> sit(other, then), () -> open(folder, then))),
                  this::fail);
        });
  }

  private void sit(JobOpening opened, Runnable then) {
    window.sit(opened);
    then.run();
  }

  /** Whether it is the open map itself, or a job over it: then it has to be let go of first. */
  private static boolean isOfOpenMap(Path folder, Sitting now) throws StoreException, IOException {
    Path map = now.folder().path();
    if (isSame(folder, map)
        || now.job().isPresent() && isSame(folder, now.job().get().folder().path())) {
      return true;
    }
    if (!JobFolder.isJob(folder)) {
      return false;
    }
    try (JobFolder job = JobFolder.open(folder)) {
      return isSame(JobMap.of(job), map);
    }
  }

  private static boolean isSame(Path one, Path other) throws IOException {
    return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
  }

  /** Opens a map's folder, where what was open before is closed already. */
  void open(Path folder) {
    open(folder, () -> {});
  }

  /** As {@link #open(Path)}, and something to do once the map is there. */
  void open(Path folder, Runnable then) {
    program
        .jobs()
        .run(
            Texts.of("file.opening", folder),
            watch -> JobOpening.of(folder, program.notes()),
            opened -> sit(opened, then),
            problem -> {
              window.showStart();
              fail(problem);
            });
  }

  /** Asks for a folder, then opens it. */
  void chooseAndOpen() {
    JFileChooser chooser = new JFileChooser(program.settings().lastFolder().toFile());
    chooser.setDialogTitle(Texts.of("open.title"));
    chooser.setFileSelectionMode(JFileChooser.FILES_AND_DIRECTORIES);
    if (chooser.showOpenDialog(window) == JFileChooser.APPROVE_OPTION) {
      Path chosen = chooser.getSelectedFile().toPath();
      if (Unpack.isPack(chosen)) {
        remember(chosen);
        window.packs().take(chosen);
        return;
      }
      Path parent = chosen.toAbsolutePath().getParent();
      Path folder = chosen.endsWith(MapFolder.MAP_FILE) && parent != null ? parent : chosen;
      remember(folder);
      window.open(folder);
    }
  }

  private void remember(Path folder) {
    Path parent = folder.toAbsolutePath().getParent();
    program.settings().setLastFolder(parent == null ? folder : parent);
  }

  /**
   * Opens the demo: a copy of one's own, so that the one that came with the program stays whole.
   */
  void openDemo(Path demo) {
    Path copy = Path.of(System.getProperty("user.home")).resolve("Relegend").resolve("demo");
    program
        .jobs()
        .run(
            Texts.of("file.opening", copy),
            watch -> {
              if (!Files.exists(copy.resolve(MapFolder.MAP_FILE))) {
                copyTree(demo, copy);
              }
              return copy;
            },
            window::open,
            this::fail);
  }

  private static void copyTree(Path from, Path to) throws IOException {
    List<Path> all;
    try (Stream<Path> walk = Files.walk(from)) {
      // the map's file last: where it is, the copy is whole
      all =
          walk.filter(Files::isRegularFile)
              .sorted(Comparator.comparing(file -> file.endsWith(MapFolder.MAP_FILE)))
              .toList();
    }
    for (Path file : all) {
      Path copy = to.resolve(from.relativize(file).toString());
      Files.createDirectories(copy.getParent());
      Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Asks for a title and a folder, then makes an empty map there. */
  void makeNew() {
    makeNew("");
  }

  private void makeNew(String title) {
    NewMapDialog.ask(window, program.settings().lastFolder(), title)
        .ifPresent(asked -> window.saved(() -> make(asked)));
  }

  private void make(NewMapDialog.Asked asked) {
    BoardMap empty = BoardMap.empty(UUID.randomUUID().toString(), MapInfo.titled(asked.title()));
    program
        .jobs()
        .run(
            asked.title(),
            watch -> MapFolder.create(asked.folder(), empty),
            made -> {
              remember(asked.folder());
              window.leave(() -> window.sit(made));
            },
            problem -> {
              fail(problem);
              makeNew(asked.title());
            });
  }

  /** Asks for the folder of a new job, which then lies over the open map. */
  void makeJob() {
    Sitting open = window.sitting().orElse(null);
    if (open == null || open.job().isPresent()) {
      say(Texts.of(open == null ? "job.nomap" : "job.already"));
      return;
    }
    Path parent = open.folder().path().toAbsolutePath().getParent();
    Path proposed = (parent == null ? open.folder().path() : parent).resolve("job");
    new Form("newjob")
        .line("folder", proposed.toString())
        .ask(window)
        .flatMap(told -> path(told.getOrDefault("folder", "")))
        .ifPresent(folder -> makeJob(open, folder));
  }

  /** What was typed as a path; where it can be none, that is said. */
  Optional<Path> path(String typed) {
    try {
      return Optional.of(Path.of(typed));
    } catch (InvalidPathException odd) {
      say(Texts.of("file.nopath", typed, String.valueOf(odd.getReason())));
      return Optional.empty();
    }
  }

  private void makeJob(Sitting open, Path folder) {
    remember(folder);
    program
        .jobs()
        .run(
            Texts.of("file.opening", folder),
            watch -> JobOpening.create(folder, open.folder()),
            made -> {
              window.layOver(made);
              JobDialogs.intake(window, open.session());
            },
            this::fail);
  }

  /** Lets go of an open map. */
  void release(Sitting open, Runnable then) {
    program
        .jobs()
        .run(
            open.folder().path().toString(),
            watch -> {
              open.folder().close();
              return open;
            },
            closed -> then.run(),
            problem -> {
              fail(problem);
              then.run();
            });
  }

  /** Shows how the open map stands to the one on disk. */
  void showState(WorkPanel panel, Keeping.State state) {
    if (state instanceof Keeping.State.Saved) {
      panel.status().showSaved(Texts.of("save.saved"));
    } else if (state instanceof Keeping.State.Saving) {
      panel.status().showSaved(Texts.of("save.saving"));
    } else if (state instanceof Keeping.State.Waiting) {
      panel.status().showSaved(Texts.of("save.waiting"));
    } else if (state instanceof Keeping.State.ReadOnly) {
      panel.status().showSaved(Texts.of("save.readonly"));
    } else if (state instanceof Keeping.State.Failed failed) {
      panel.status().showSaved("");
      window
          .banner()
          .say(
              Texts.of("banner.failed", failed.reason()),
              List.of(
                  new Banner.Choice(
                      Texts.of("banner.failed.again"), () -> window.acts().run(UserAction.SAVE))));
    } else {
      panel.status().showSaved("");
      sayChangedOnDisk();
    }
  }

  private void sayChangedOnDisk() {
    window
        .banner()
        .say(
            Texts.of("banner.changed"),
            List.of(
                new Banner.Choice(Texts.of("banner.changed.save"), this::saveElsewhere),
                new Banner.Choice(Texts.of("banner.changed.reload"), this::takeFromDisk)));
  }

  /**
   * Asks whether to leave a map that could not be saved; true where one stays, or saves it
   * elsewhere first.
   */
  boolean staysUnsaved(Keeping.State state) {
    String why =
        state instanceof Keeping.State.Failed failed ? failed.reason() : Texts.of("leave.changed");
    Object[] choices = {
      Texts.of("leave.stay"), Texts.of("banner.changed.save"), Texts.of("leave.lose")
    };
    int chosen =
        JOptionPane.showOptionDialog(
            window,
            words(Texts.of("leave.unsaved", why)),
            Texts.of("leave.title"),
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.WARNING_MESSAGE,
            null,
            choices,
            choices[0]);
    if (chosen == 1) {
      saveElsewhere();
    }
    return chosen != 2;
  }

  /** The map as it is here goes into another folder; the one on disk stays as it is there. */
  private void saveElsewhere() {
    window
        .sitting()
        .ifPresent(
            sitting ->
                NewMapDialog.ask(window, program.settings().lastFolder(), "")
                    .ifPresentOrElse(
                        asked -> copyTo(sitting, asked.folder()), this::sayChangedOnDisk));
  }

  private void copyTo(Sitting sitting, Path folder) {
    BoardMap mine = sitting.session().map();
    program
        .jobs()
        .run(
            folder.toString(),
            watch -> {
              MapFolder copy = MapFolder.create(folder, mine);
              copy.close();
              copyPictures(mine, sitting.folder(), folder);
              sitting.folder().discardUnsaved();
              sitting.folder().close();
              return folder;
            },
            copy -> letJobGo(sitting, () -> open(copy)),
            problem -> {
              fail(problem);
              sayChangedOnDisk();
            });
  }

  /** The job over a map that was closed is closed as well, so that it can be opened again. */
  private static void letJobGo(Sitting sitting, Runnable then) {
    sitting.job().ifPresentOrElse(job -> job.release(then), then);
  }

  private static void copyPictures(BoardMap map, MapFolder from, Path to) throws IOException {
    for (Picture picture : map.pictures()) {
      Path copy = to.resolve(picture.file());
      Path parent = copy.getParent();
      if (parent != null) {
        Files.createDirectories(parent);
      }
      if (Files.exists(from.fileOf(picture)) && !Files.exists(copy)) {
        Files.copy(from.fileOf(picture), copy);
      }
    }
  }

  /** The job that lay over the map, and so both; else the map alone. */
  private static Path toOpen(Sitting sitting, Path map) {
    return sitting.job().map(job -> job.folder().path()).orElse(map);
  }

  private void takeFromDisk() {
    window
        .sitting()
        .ifPresent(
            sitting ->
                program
                    .jobs()
                    .run(
                        sitting.folder().path().toString(),
                        watch -> {
                          sitting.folder().discardUnsaved();
                          sitting.folder().close();
                          return sitting.folder().path();
                        },
                        map -> letJobGo(sitting, () -> open(toOpen(sitting, map))),
                        this::fail));
  }

  /** Says what one should know of how a map was opened. */
  void tell(List<String> notices) {
    tell(notices, List.of());
  }

  private void tell(List<String> notices, List<Banner.Choice> choices) {
    if (!notices.isEmpty()) {
      List<Banner.Choice> all = new ArrayList<>(choices);
      all.add(new Banner.Choice(Texts.of("banner.dismiss"), () -> {}));
      window.banner().say(String.join("  ", notices), all);
    }
  }

  /** Says what one should know of what was just opened; a job that lay over the map is offered. */
  void tell(JobOpening opened) {
    List<String> notices = new ArrayList<>(opened.notices());
    List<Banner.Choice> choices = new ArrayList<>();
    Optional<Path> job = opened.jobBefore();
    if (job.isPresent()) {
      notices.add(Texts.of("job.before", job.get()));
      choices.add(new Banner.Choice(Texts.of("job.before.open"), () -> window.open(job.get())));
    }
    tell(notices, choices);
  }

  /** One clear message; nothing else has happened. */
  void fail(Throwable problem) {
    boolean told =
        problem instanceof StoreException
            || problem instanceof PictureException
            || problem instanceof ShareException
            || problem instanceof EditRefusedException;
    say(
        told
            ? String.valueOf(problem.getMessage())
            : Texts.of("error.unexpected", problem.toString()));
  }

  void say(String message) {
    JOptionPane.showMessageDialog(
        window, words(message), Texts.of("error.title"), JOptionPane.ERROR_MESSAGE);
  }

  /** In lines of a width that can be read. */
  private static JLabel words(String message) {
    return new JLabel("<html><body style='width:420px'>" + escape(message));
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;");
  }
}
