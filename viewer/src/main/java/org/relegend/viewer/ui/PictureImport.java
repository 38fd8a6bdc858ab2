package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import org.relegend.map.EditGroup;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.Picture;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PictureIntake;
import org.relegend.share.OwnScans;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.mode.bench.OpenJob;

/** Adding pages and photos to the open map: asked for, dropped or chosen, one after the other. */
final class PictureImport {
  private final MapWindow window;
  private final Program program;

  /** What is still to be asked about; one dialog at a time. */
  private final Deque<Runnable> waiting = new ArrayDeque<>();

  PictureImport(MapWindow window, Program program) {
    this.window = window;
    this.program = program;
  }

  void choosePages() {
    choose().forEach(this::addPages);
  }

  void choosePhotos() {
    choose().forEach(this::addPhoto);
  }

  private List<Path> choose() {
    if (window.sitting().isEmpty()) {
      window
          .banner()
          .say(
              Messages.of("adding.nomap"),
              List.of(choice(UserAction.NEW), choice(UserAction.OPEN)));
      return List.of();
    }
    JFileChooser chooser = new JFileChooser(program.settings().lastFolder().toFile());
    chooser.setMultiSelectionEnabled(true);
    if (chooser.showOpenDialog(window) != JFileChooser.APPROVE_OPTION) {
      return List.of();
    }
    List<Path> files =
        List.of(chooser.getSelectedFiles()).stream().map(file -> file.toPath()).toList();
    files.stream()
        .findFirst()
        .map(Path::toAbsolutePath)
        .map(Path::getParent)
        .ifPresent(program.settings()::setLastFolder);
    return files;
  }

  private Banner.Choice choice(UserAction act) {
    return new Banner.Choice(act.text(), () -> window.acts().run(act));
  }

  void addPages(Path file) {
    queue(
        () ->
            window
                .sitting()
                .filter(s -> OwnScans.isPageMissing(s.folder().path(), s.session().map()))
                .ifPresentOrElse(open -> addOwnScan(open, file), () -> addAnyPages(file)));
  }

  /** Where a pack left pages out, a scan may show one of them; else it is a page as any other. */
  private void addOwnScan(OpenMap open, Path file) {
    OwnScans own =
        new OwnScans(
            open.folder().path(),
            open.session().map(),
            open.session().hand().attests(Evidence.MATCHED),
            false);
    open.panel()
        .status()
        .watch(
            program
                .jobs()
                .run(
                    Messages.of("scan.looking", nameOf(file)),
                    watch -> {
                      own.take(file, watch::at);
                      return own;
                    },
                    (Consumer<OwnScans>) done -> scanned(open, done, file),
                    this::failed));
  }

  private void scanned(OpenMap open, OwnScans own, Path file) {
    if (!isOpen(open)) {
      sayLeft(file);
      next();
      return;
    }
    String text =
        String.join("  ", own.results().stream().map(OwnScans.ScanOutcome::line).toList());
    if (own.results().stream().allMatch(one -> one.shown().isEmpty())) {
      window.messages().tell(List.of(Messages.of("scan.unknown", nameOf(file))));
      addAnyPages(file);
    } else if (own.results().stream().allMatch(one -> one.own().isEmpty())) {
      window.openThen(open.folder().path(), () -> window.messages().tell(List.of(text)));
      next();
    } else {
      window.messages().tell(List.of(text));
      added(open, file, own.edit(Messages.of("scan.added", nameOf(file))));
    }
  }

  private void addAnyPages(Path file) {
    program
        .jobs()
        .run(
            Messages.of("file.adding", nameOf(file)),
            watch -> PictureIntake.pagesIn(file),
            count -> askPages(file, count),
            this::failed);
  }

  private void askPages(Path file, int count) {
    AddPictureDialogs.askPages(window, stem(file), count)
        .ifPresentOrElse(
            asked ->
                run(
                    file,
                    (intake, watch) ->
                        intake.pages(file, asked.title(), asked.numbers(), watch::at)),
            this::next);
  }

  /** What is no photo is refused before anything is asked about it. */
  void addPhoto(Path file) {
    queue(
        () ->
            program
                .jobs()
                .run(
                    Messages.of("file.adding", nameOf(file)),
                    watch -> PhotoFile.probe(file),
                    photo -> askPhoto(file),
                    this::failed));
  }

  private void askPhoto(Path file) {
    Optional<OpenMap> open = window.sitting();
    open.flatMap(
            sitting ->
                AddPictureDialogs.askPhoto(
                    window,
                    sitting.session().map(),
                    stem(file),
                    sitting.session().room(OpenJob.class).isOpen()))
        .ifPresentOrElse(
            asked -> {
              if (asked.whose() == AddPictureDialogs.Whose.UNIT) {
                addUnitPhoto(open.orElseThrow(), file, asked);
              } else {
                run(file, (intake, watch) -> intake.photo(file, asked.shown(), watch::at));
              }
            },
            this::next);
  }

  private void addUnitPhoto(OpenMap sitting, Path file, AddPictureDialogs.Asked asked) {
    try {
      new UnitPhotoAdder(window, program, sitting)
          .add(file, asked.shown(), asked.closeUp(), this::next, this::failed);
    } catch (IllegalArgumentException unfit) {
      window.messages().say(String.valueOf(unfit.getMessage()));
      next();
    }
  }

  private interface Work {
    EditGroup run(PictureIntake intake, org.relegend.viewer.work.TaskMonitor watch)
        throws Exception;
  }

  private void run(Path file, Work work) {
    Optional<OpenMap> open = window.sitting();
    if (open.isEmpty()) {
      next();
      return;
    }
    OpenMap sitting = open.get();
    PictureIntake intake = new PictureIntake(sitting.folder().path(), sitting.session().map());
    sitting
        .panel()
        .status()
        .watch(
            program
                .jobs()
                .run(
                    Messages.of("file.adding", nameOf(file)),
                    watch -> work.run(intake, watch),
                    (Consumer<EditGroup>) edit -> added(sitting, file, edit),
                    this::failed));
  }

  private void added(OpenMap sitting, Path file, EditGroup edit) {
    if (!isOpen(sitting)) {
      sayLeft(file);
    } else if (before(sitting, edit).isPresent()) {
      sayThere(sitting, file, edit, before(sitting, edit).get());
    } else if (sitting.session().document().apply(edit)) {
      pictures(edit).stream()
          .findFirst()
          .map(Picture::id)
          .ifPresent(sitting.session().desk()::show);
    }
    next();
  }

  /** The picture of the map that is the same, byte for byte, and the same page of it. */
  private static Optional<Picture> before(OpenMap sitting, EditGroup edit) {
    List<Picture> added = pictures(edit);
    return sitting.session().map().pictures().stream()
        .filter(known -> !added.isEmpty() && added.stream().allMatch(one -> isSame(known, one)))
        .findFirst();
  }

  private static boolean isSame(Picture known, Picture added) {
    return known.sha256().equals(added.sha256())
        && (!(known instanceof Page page)
            || added instanceof Page other && page.number() == other.number());
  }

  private static List<Picture> pictures(EditGroup edit) {
    return MapTables.PICTURES.putBy(edit.steps());
  }

  /** It is shown, and the copy that was made of it is gone again. */
  private void sayThere(OpenMap sitting, Path file, EditGroup edit, Picture known) {
    for (Picture copy : pictures(edit)) {
      boolean used =
          sitting.session().map().pictures().stream()
              .anyMatch(picture -> picture.file().equals(copy.file()));
      if (!used) {
        sitting.folder().fileOf(copy).toFile().delete();
      }
    }
    sitting.session().desk().show(known.id());
    window.messages().say(Messages.of("file.there", nameOf(file), known.caption()));
  }

  /** What comes after the map was closed is no longer put into it. */
  private boolean isOpen(OpenMap sitting) {
    return window.sitting().filter(now -> now.session() == sitting.session()).isPresent();
  }

  private void sayLeft(Path file) {
    if (window.isDisplayable()) {
      window.messages().say(Messages.of("file.left", nameOf(file)));
    }
  }

  private void failed(Throwable problem) {
    window.messages().fail(problem);
    next();
  }

  /** What is still to be asked about was meant for the map that is left. */
  void forget() {
    while (waiting.size() > 1) {
      waiting.removeLast(); // the first is being worked on, and takes itself away
    }
  }

  private void queue(Runnable ask) {
    waiting.add(ask);
    if (waiting.size() == 1) {
      ask.run();
    }
  }

  private void next() {
    waiting.poll();
    Runnable ask = waiting.peek();
    if (ask != null) {
      ask.run();
    }
  }

  private static String nameOf(Path file) {
    return String.valueOf(file.getFileName());
  }

  private static String stem(Path file) {
    String name = nameOf(file);
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
