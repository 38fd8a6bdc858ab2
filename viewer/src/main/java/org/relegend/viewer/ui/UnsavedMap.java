package org.relegend.viewer.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JOptionPane;
import org.relegend.map.BoardMap;
import org.relegend.map.Picture;
import org.relegend.store.MapFolder;
import org.relegend.viewer.control.Texts;
import org.relegend.viewer.control.UserAction;

/** How the open map stands to the one on disk, and what can be done where the two differ. */
final class UnsavedMap {
  private final MapWindow window;
  private final Program program;
  private final Consumer<Path> reopen;

  /**
   * @param reopen opens a folder where what was open before is closed already
   */
  UnsavedMap(MapWindow window, Program program, Consumer<Path> reopen) {
    this.window = window;
    this.program = program;
    this.reopen = reopen;
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
            WindowMessages.words(Texts.of("leave.unsaved", why)),
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
            copy -> letJobGo(sitting, () -> reopen.accept(copy)),
            problem -> {
              window.messages().fail(problem);
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
                        map -> letJobGo(sitting, () -> reopen.accept(toOpen(sitting, map))),
                        window.messages()::fail));
  }
}
