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
import org.relegend.viewer.control.Messages;
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
  void showState(MapPanel panel, MapAutosave.State state) {
    if (state instanceof MapAutosave.State.Saved) {
      panel.status().showSaved(Messages.of("save.saved"));
    } else if (state instanceof MapAutosave.State.SaveRunning) {
      panel.status().showSaved(Messages.of("save.saving"));
    } else if (state instanceof MapAutosave.State.Unsaved) {
      panel.status().showSaved(Messages.of("save.waiting"));
    } else if (state instanceof MapAutosave.State.ReadOnly) {
      panel.status().showSaved(Messages.of("save.readonly"));
    } else if (state instanceof MapAutosave.State.Failed failed) {
      panel.status().showSaved("");
      window
          .banner()
          .say(
              Messages.of("banner.failed", failed.reason()),
              List.of(
                  new Banner.Choice(
                      Messages.of("banner.failed.again"),
                      () -> window.acts().run(UserAction.SAVE))));
    } else {
      panel.status().showSaved("");
      sayChangedOnDisk();
    }
  }

  private void sayChangedOnDisk() {
    window
        .banner()
        .say(
            Messages.of("banner.changed"),
            List.of(
                new Banner.Choice(Messages.of("banner.changed.save"), this::saveElsewhere),
                new Banner.Choice(Messages.of("banner.changed.reload"), this::takeFromDisk)));
  }

  /**
   * Asks whether to leave a map that could not be saved; true where one stays, or saves it
   * elsewhere first.
   */
  boolean staysUnsaved(MapAutosave.State state) {
    String why =
        state instanceof MapAutosave.State.Failed failed
            ? failed.reason()
            : Messages.of("leave.changed");
    Object[] choices = {
      Messages.of("leave.stay"), Messages.of("banner.changed.save"), Messages.of("leave.lose")
    };
    int chosen =
        JOptionPane.showOptionDialog(
            window,
            WindowMessages.words(Messages.of("leave.unsaved", why)),
            Messages.of("leave.title"),
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

  private void copyTo(OpenMap sitting, Path folder) {
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
  private static void letJobGo(OpenMap sitting, Runnable then) {
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
  private static Path toOpen(OpenMap sitting, Path map) {
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
