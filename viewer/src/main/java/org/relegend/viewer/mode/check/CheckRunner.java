package org.relegend.viewer.mode.check;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import javax.swing.Timer;
import org.relegend.check.CheckContext;
import org.relegend.check.Checks;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.Picture;
import org.relegend.store.Digests;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.LatestJob;
import org.relegend.viewer.work.TaskRunner;

/** Runs the checks anew soon after the map changed; results of an older map are dropped. */
public final class CheckRunner {
  private static final int MILLIS = 600;

  private record Digest(FileTime changed, String sha256) {}

  private final Session session;
  private final MapFolder folder;
  private final LatestJob latest;
  private final Consumer<List<Finding>> shown;
  private final Timer timer = new Timer(MILLIS, fired -> run());

  /** Reading a photo whole takes long, so its digest is kept as long as the file stays as it is. */
  private final Map<Path, Digest> digests = new ConcurrentHashMap<>();

  public CheckRunner(
      Session session, MapFolder folder, TaskRunner jobs, Consumer<List<Finding>> shown) {
    this.session = session;
    this.folder = folder;
    latest = new LatestJob(jobs);
    this.shown = shown;
    timer.setRepeats(false);
  }

  /** The map changed. */
  public void soon() {
    timer.restart();
  }

  /** The map is closed: what still runs is of no interest. */
  public void stop() {
    timer.stop();
    latest.cancel();
  }

  private void run() {
    latest.cancel();
    BoardMap map = session.map();
    latest.run(
        Messages.of("findings.checking"),
        watch -> Checks.inspect(CheckContext.of(map, this::digest)),
        found -> {
          if (session.map().equals(map)) {
            shown.accept(found);
          }
        },
        problem -> {});
  }

  private Optional<String> digest(Picture picture) {
    Path file = folder.fileOf(picture);
    try {
      FileTime changed = Files.getLastModifiedTime(file);
      Digest known = digests.get(file);
      if (known == null || !known.changed().equals(changed)) {
        known = new Digest(changed, Digests.sha256(file));
        digests.put(file, known);
      }
      return Optional.of(known.sha256());
    } catch (IOException | StoreException unreadable) {
      return Optional.empty();
    }
  }
}
