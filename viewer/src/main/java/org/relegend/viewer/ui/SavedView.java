package org.relegend.viewer.ui;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ViewState;

/**
 * Where one was in a map or job: the two pictures with their zoom, what was chosen, which list was
 * open. Kept beside a job, or for a map alone with what the program may make again; never in a map,
 * and so never shared.
 *
 * @param card number of the card walked to
 * @param list the list of the job that lay below; empty for the strip
 * @param job the folder of the job that lay over the map last; empty for none
 */
record SavedView(
    Optional<Spot> page,
    Optional<Spot> photo,
    Optional<Subject> chosen,
    int card,
    String list,
    String job) {
  /** Its name in a job's folder. */
  static final String FILE = "desk.txt";

  static final SavedView NOWHERE =
      new SavedView(Optional.empty(), Optional.empty(), Optional.empty(), 0, "", "");

  /**
   * One picture as it was looked at.
   *
   * @param centre of what was seen, in units of the picture
   * @param scale pixels of the screen for each of these units
   */
  record Spot(PictureId picture, Point centre, double scale, Orientation orientation) {
    static Spot of(PictureId picture, ViewState view) {
      return new Spot(picture, view.centre(), view.scale(), view.orientation());
    }

    private String text() {
      return "%s %s %s %s %d %s %s"
          .formatted(
              picture,
              centre.x(),
              centre.y(),
              scale,
              orientation.quarterTurns(),
              orientation.mirrored(),
              orientation.tilt());
    }

    /**
     * Reads what {@link #text} writes.
     *
     * @throws IllegalArgumentException where it is anything else
     */
    private static Spot parse(String text) {
      String[] words = text.split(" ", -1);
      if (words.length != 7) {
        throw new IllegalArgumentException("no place on a picture: " + text);
      }
      double scale = Double.parseDouble(words[3]);
      if (!(scale > 0 && scale <= ViewState.MAX_SCALE)) {
        throw new IllegalArgumentException("no scale: " + words[3]);
      }
      return new Spot(
          new PictureId(words[0]),
          new Point(Double.parseDouble(words[1]), Double.parseDouble(words[2])),
          scale,
          new Orientation(
              Integer.parseInt(words[4]),
              Boolean.parseBoolean(words[5]),
              Double.parseDouble(words[6])));
    }
  }

  SavedView withJob(Path folder) {
    return new SavedView(page, photo, chosen, card, list, folder.toAbsolutePath().toString());
  }

  /** What was written there; nowhere where that can't be read, since it is only a convenience. */
  static SavedView read(Path file) {
    try {
      Properties result = new Properties();
      result.load(new StringReader(Files.readString(file)));
      String job = result.getProperty("job", "");
      return new SavedView(
          text(result, "page").map(Spot::parse),
          text(result, "photo").map(Spot::parse),
          text(result, "chosen").map(Subject::parse),
          text(result, "card").map(Integer::parseInt).orElse(0),
          result.getProperty("list", ""),
          Path.of(job).toString());
    } catch (IOException | IllegalArgumentException unreadable) {
      return NOWHERE;
    }
  }

  private static Optional<String> text(Properties result, String key) {
    return Optional.ofNullable(result.getProperty(key)).filter(text -> !text.isEmpty());
  }

  /** Writes it, whole or not at all. */
  void write(Path file) throws IOException {
    TreeMap<String, String> result = new TreeMap<>();
    page.ifPresent(spot -> result.put("page", spot.text()));
    photo.ifPresent(spot -> result.put("photo", spot.text()));
    chosen.ifPresent(subject -> result.put("chosen", subject.toString()));
    result.put("card", Integer.toString(card));
    result.put("list", list);
    result.put("job", job);
    Properties properties = new Properties();
    properties.putAll(result);
    StringWriter text = new StringWriter();
    properties.store(text, null);
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    Path half = file.resolveSibling(file.getFileName() + ".tmp");
    Files.write(half, text.toString().getBytes(StandardCharsets.UTF_8));
    Files.move(half, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }
}
