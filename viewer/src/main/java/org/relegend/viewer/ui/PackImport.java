package org.relegend.viewer.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFileChooser;
import org.relegend.map.BoardMap;
import org.relegend.map.EditGroup;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Picture;
import org.relegend.share.MapEdits;
import org.relegend.share.Merge;
import org.relegend.share.MergeResult;
import org.relegend.share.PackReader;
import org.relegend.share.PackWriter;
import org.relegend.share.SamePhotos;
import org.relegend.share.ShareException;
import org.relegend.share.TrustReport;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import org.relegend.viewer.control.Messages;

/** What somebody else packed: opened by itself, or brought together with the map that is open. */
final class PackImport {
  /** A pack that was looked into: whose map it is, and what there is to know of it. */
  private record Seen(Path file, BoardMap map, List<String> trust) {}

  /** What two maps made together, the edit that leads there, and the map it is told from. */
  private record Together(BoardMap before, EditGroup edit, int clashes) {}

  private final MapWindow window;
  private final Program program;

  PackImport(MapWindow window, Program program) {
    this.window = window;
    this.program = program;
  }

  /** Takes a pack; where its map is the one that is open, asks what to do with it. */
  void take(Path file) {
    program
        .jobs()
        .run(
            Messages.of("file.opening", file),
            watch -> {
              try (PackReader pack = PackReader.open(file)) {
                return new Seen(file, pack.map(), TrustReport.of(pack.map()).lines());
              }
            },
            this::taken,
            window.messages()::fail);
  }

  private void taken(Seen seen) {
    boolean same =
        window
            .sitting()
            .filter(open -> open.session().map().id().equals(seen.map().id()))
            .isPresent();
    if (!same) {
      openAlone(seen);
      return;
    }
    window
        .banner()
        .say(
            Messages.of("pack.same", seen.map().info().title()),
            List.of(
                new Banner.Choice(Messages.of("pack.merge"), () -> merge(seen, Optional.empty())),
                new Banner.Choice(Messages.of("pack.merge.base"), () -> chooseBase(seen)),
                new Banner.Choice(Messages.of("pack.alone"), () -> openAlone(seen)),
                new Banner.Choice(Messages.of("banner.dismiss"), () -> {})));
  }

  /** Unpacks beside the file and opens what came of it. */
  private void openAlone(Seen seen) {
    Path folder = freeFolder(seen.file());
    program
        .jobs()
        .run(
            Messages.of("file.opening", folder),
            watch -> {
              try (PackReader pack = PackReader.open(seen.file())) {
                return pack.into(folder);
              }
            },
            missing -> {
              window.openThen(folder, () -> tell(seen, folder, missing));
            },
            window.messages()::fail);
  }

  private void tell(Seen seen, Path folder, List<Picture> missing) {
    String absent =
        missing.isEmpty()
            ? ""
            : "  "
                + Messages.of(
                    "pack.missing",
                    String.join(", ", missing.stream().map(Picture::caption).toList()));
    window
        .banner()
        .say(
            Messages.of("pack.opened", folder)
                + "  "
                + String.join("; ", seen.trust())
                + "."
                + absent,
            List.of(new Banner.Choice(Messages.of("banner.dismiss"), () -> {})));
  }

  private static Path freeFolder(Path file) {
    String name = String.valueOf(file.getFileName());
    String stem =
        name.endsWith(PackWriter.ENDING)
            ? name.substring(0, name.length() - PackWriter.ENDING.length())
            : name;
    Path folder = file.resolveSibling(stem);
    for (int number = 2; Files.exists(folder); number++) {
      folder = file.resolveSibling(stem + " " + number);
    }
    return folder;
  }

  /** With a common base it can be told what was taken away, and what only one side changed. */
  private void chooseBase(Seen seen) {
    JFileChooser chooser = new JFileChooser(program.settings().lastFolder().toFile());
    chooser.setDialogTitle(Messages.of("pack.merge.base.title"));
    if (chooser.showOpenDialog(window) == JFileChooser.APPROVE_OPTION) {
      merge(seen, Optional.of(chooser.getSelectedFile().toPath()));
    }
  }

  private void merge(Seen seen, Optional<Path> base) {
    window
        .sitting()
        .ifPresent(
            open -> {
              BoardMap before = open.session().map();
              program
                  .jobs()
                  .run(
                      Messages.of("pack.merging"),
                      watch -> together(seen, base, open.folder(), before),
                      done -> finish(open, done),
                      window.messages()::fail);
            });
  }

  private static Together together(
      Seen seen, Optional<Path> base, MapFolder folder, BoardMap before)
      throws ShareException, StoreException, IOException, EditRefusedException {
    BoardMap theirs = SamePhotos.matched(folder, seen.map());
    MergeResult merged =
        base.isPresent()
            ? Merge.of(SamePhotos.matched(folder, base(base.get(), before)), before, theirs)
            : Merge.of(before, theirs);
    EditGroup edit =
        MapEdits.between(
            Messages.of("pack.merge.label", seen.map().info().title()), before, merged.map());
    bringFiles(seen.file(), folder, merged.map());
    return new Together(before, edit, merged.clashes().size());
  }

  private static BoardMap base(Path file, BoardMap before) throws ShareException, StoreException {
    try (PackReader pack = PackReader.open(file)) {
      if (!pack.map().id().equals(before.id())) {
        throw new ShareException(file, Messages.of("pack.base.other"));
      }
      return pack.map();
    }
  }

  /** Their photos come along, under the names they have in the merged map. */
  private static void bringFiles(Path file, MapFolder folder, BoardMap merged)
      throws ShareException, StoreException, IOException {
    List<Picture> without =
        merged.pictures().stream().filter(p -> !Files.exists(folder.fileOf(p))).toList();
    if (without.isEmpty()) {
      return;
    }
    Path work = Files.createTempDirectory("relegend-pack");
    try (PackReader pack = PackReader.open(file)) {
      Path all = work.resolve("all");
      pack.into(all);
      for (Picture picture : without) {
        for (Picture packed : pack.map().pictures()) {
          Path source = all.resolve(packed.file());
          Path place = folder.fileOf(picture);
          if (packed.sha256().equals(picture.sha256())
              && Files.exists(source)
              && !Files.exists(place)) {
            Files.createDirectories(place.getParent() == null ? place : place.getParent());
            Files.copy(source, place);
          }
        }
      }
    } finally {
      try (Stream<Path> left = Files.walk(work)) {
        for (Path path : left.sorted(java.util.Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }

  private void finish(OpenMap open, Together done) {
    boolean current =
        window.sitting().filter(open::equals).isPresent()
            && open.session().map().equals(done.before());
    if (!current) {
      window.messages().say(Messages.of("pack.changed"));
      return;
    }
    if (open.session().document().apply(done.edit())) {
      if (done.clashes() > 0) {
        open.panel().lower().showClashes();
      }
      window
          .banner()
          .say(
              Messages.of("pack.merged", done.clashes()),
              List.of(new Banner.Choice(Messages.of("banner.dismiss"), () -> {})));
    }
  }
}
