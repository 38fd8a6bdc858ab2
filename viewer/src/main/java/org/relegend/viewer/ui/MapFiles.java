package org.relegend.viewer.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import javax.swing.JFileChooser;
import org.relegend.map.BoardMap;
import org.relegend.map.MapInfo;
import org.relegend.share.PackReader;
import org.relegend.store.JobFolder;
import org.relegend.store.JobMap;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import org.relegend.viewer.control.Form;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.mode.bench.JobDialogs;

/** Opening, making and keeping maps on disk, from one window; what takes time runs elsewhere. */
final class MapFiles {
  private final MapWindow window;
  private final Program program;

  MapFiles(MapWindow window, Program program) {
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
          Optional<OpenMap> now = window.sitting();
          program
              .jobs()
              .run(
                  Messages.of("file.opening", folder),
                  watch ->
                      now.isPresent() && isOfOpenMap(folder, now.get())
                          ? Optional.<OpenedFolder>empty()
                          : Optional.of(OpenedFolder.of(folder, program.notes())),
                  opened ->
                      window.leave(
                          () ->
                              opened.ifPresentOrElse(
                                  other -> sit(other, then), () -> open(folder, then))),
                  window.messages()::fail);
        });
  }

  private void sit(OpenedFolder opened, Runnable then) {
    window.sit(opened);
    then.run();
  }

  /** Whether it is the open map itself, or a job over it: then it has to be let go of first. */
  private static boolean isOfOpenMap(Path folder, OpenMap now) throws StoreException, IOException {
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
            Messages.of("file.opening", folder),
            watch -> OpenedFolder.of(folder, program.notes()),
            opened -> sit(opened, then),
            problem -> {
              window.showStart();
              window.messages().fail(problem);
            });
  }

  /** Asks for a folder, then opens it. */
  void chooseAndOpen() {
    JFileChooser chooser = new JFileChooser(program.settings().lastFolder().toFile());
    chooser.setDialogTitle(Messages.of("open.title"));
    chooser.setFileSelectionMode(JFileChooser.FILES_AND_DIRECTORIES);
    if (chooser.showOpenDialog(window) == JFileChooser.APPROVE_OPTION) {
      Path chosen = chooser.getSelectedFile().toPath();
      if (PackReader.isPack(chosen)) {
        remember(chosen);
        window.takePack(chosen);
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
            Messages.of("file.opening", copy),
            watch -> {
              if (!Files.exists(copy.resolve(MapFolder.MAP_FILE))) {
                copyTree(demo, copy);
              }
              return copy;
            },
            window::open,
            window.messages()::fail);
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
              window.messages().fail(problem);
              makeNew(asked.title());
            });
  }

  /** Asks for the folder of a new job, which then lies over the open map. */
  void makeJob() {
    OpenMap open = window.sitting().orElse(null);
    if (open == null || open.job().isPresent()) {
      window.messages().say(Messages.of(open == null ? "job.nomap" : "job.already"));
      return;
    }
    Path parent = open.folder().path().toAbsolutePath().getParent();
    Path proposed = (parent == null ? open.folder().path() : parent).resolve("job");
    new Form("newjob")
        .line("folder", proposed.toString())
        .ask(window)
        .flatMap(stated -> window.messages().path(stated.getOrDefault("folder", "")))
        .ifPresent(folder -> makeJob(open, folder));
  }

  private void makeJob(OpenMap open, Path folder) {
    remember(folder);
    program
        .jobs()
        .run(
            Messages.of("file.opening", folder),
            watch -> OpenedFolder.create(folder, open.folder()),
            made -> {
              window.layOver(made);
              JobDialogs.intake(window, open.session());
            },
            window.messages()::fail);
  }

  /** Lets go of an open map. */
  void release(OpenMap open, Runnable then) {
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
              window.messages().fail(problem);
              then.run();
            });
  }

  /** Says what one should know of what was just opened; a job that lay over the map is offered. */
  void tell(OpenedFolder opened) {
    List<String> notices = new ArrayList<>(opened.notices());
    List<Banner.Choice> choices = new ArrayList<>();
    Optional<Path> job = opened.jobBefore();
    if (job.isPresent()) {
      notices.add(Messages.of("job.before", job.get()));
      choices.add(new Banner.Choice(Messages.of("job.before.open"), () -> window.open(job.get())));
    }
    window.messages().tell(notices, choices);
  }
}
