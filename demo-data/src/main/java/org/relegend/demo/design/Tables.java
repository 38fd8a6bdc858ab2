package org.relegend.demo.design;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The tables of the demo instrument, as they lie in this module's resources. */
public final class Tables {
  private static final String NUMBER = "QUILLMARSH  T40-B  ISS 3";
  private static final double WIDTH = 250;
  private static final double HEIGHT = 162;

  private Tables() {}

  /** The leveller's board as the tables place it. */
  public static Design leveller() {
    List<PlacedPart> parts =
        rows("parts.csv").stream()
            .map(
                row ->
                    new PlacedPart(
                        row.get("designator"),
                        row.get("kind"),
                        row.get("value"),
                        row.get("channel"),
                        spot(row, "x_mm", "y_mm")))
            .toList();
    List<PlacedPin> pins =
        rows("pins.csv").stream()
            .map(
                row ->
                    new PlacedPin(
                        row.get("designator"),
                        row.get("pin"),
                        row.get("role"),
                        row.get("net as built"),
                        row.get("net as drawn"),
                        spot(row, "x_mm component side", "y_mm")))
            .toList();
    List<Hole> holes =
        rows("holes.csv").stream()
            .map(row -> new Hole(spot(row, "x_mm", "y_mm"), number(row, "diameter_mm")))
            .toList();
    return new Design(NUMBER, WIDTH, HEIGHT, parts, pins, holes);
  }

  /** The leveller's copper, as {@code org.relegend.demo.route} routed it once. */
  public static Artwork levellerArtwork() {
    List<Track> tracks = new ArrayList<>();
    List<Link> links = new ArrayList<>();
    for (CSVRecord row : rows("artwork.csv")) {
      List<Spot> points = points(row.get("points"));
      if (row.get("kind").equals("link")) {
        links.add(new Link(row.get("net"), points.get(0), points.get(1)));
      } else {
        tracks.add(new Track(row.get("net"), number(row, "width_mm"), points));
      }
    }
    return new Artwork(tracks, links);
  }

  /** The rows of one table; a missing or broken table is a fault of this module's build. */
  public static List<CSVRecord> rows(String table) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream in = Tables.class.getResourceAsStream("/org/relegend/demo/" + table)) {
      if (in == null) {
        throw new IllegalStateException("the module lacks its table " + table);
      }
      Reader text = new InputStreamReader(in, StandardCharsets.UTF_8);
      return format.parse(text).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Spot> points(String text) {
    List<Spot> points = new ArrayList<>();
    for (String pair : text.split(";")) {
      int gap = pair.indexOf(' ');
      points.add(
          new Spot(
              Double.parseDouble(pair.substring(0, gap)),
              Double.parseDouble(pair.substring(gap + 1))));
    }
    return points;
  }

  private static Spot spot(CSVRecord row, String x, String y) {
    return new Spot(number(row, x), number(row, y));
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
