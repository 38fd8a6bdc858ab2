package org.relegend.lineup;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.relegend.map.Point;

/**
 * The packages known by name: {@code DIP-14}, {@code DIP300-24} (row of 0.300 inch), {@code SIP-9},
 * {@code TO-92}, {@code AXIAL-0.5W}, {@code RADIAL-D10}. Names aren't case sensitive. A name may
 * also give row and pitch in millimetres, {@code DIP-24/7.62} or {@code DIP-16/7.5/2.5}, to take
 * the place of the table's.
 *
 * <p>The table is {@code packages.csv} (RFC 4180) beside this class: a family, the pin counts it
 * takes (a range means that the count is part of the name), how its pins are laid out, pitch, row
 * and body in millimetres, and the source of the figures.
 */
public final class Packages {
  private static final Packages KNOWN = builtIn();

  private final List<Row> rows;

  private Packages(List<Row> rows) {
    this.rows = List.copyOf(rows);
  }

  /** Those that come with the program. */
  public static Packages known() {
    return KNOWN;
  }

  /**
   * These and the ones of a further table, which go first where names are alike.
   *
   * @throws IllegalArgumentException with the line, where the table can't be understood
   */
  public Packages with(Reader table) throws IOException {
    List<Row> all = new ArrayList<>(read(table));
    all.addAll(rows);
    return new Packages(all);
  }

  /** The package of that name; none if the table has no such family or pin count. */
  public Optional<PackageShape> named(String name) {
    String[] parts = name.strip().toUpperCase(Locale.ROOT).split("/", -1);
    if (parts.length > 3) {
      return Optional.empty();
    }
    for (Row row : rows) {
      int count = row.countIn(parts[0]);
      if (count > 0) {
        double pitch = parts.length > 2 ? millimetres(parts[2]) : row.pitch;
        double across = parts.length > 1 ? millimetres(parts[1]) : row.row;
        boolean fits = pitch > 0 && (parts.length == 1 || (row.dual() && across > 0));
        return fits ? Optional.of(row.shape(name.strip(), count, pitch, across)) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** Family names, in the order of the table, each once. */
  public List<String> families() {
    return rows.stream().map(Row::family).distinct().toList();
  }

  /** Zero where the text is no length. */
  private static double millimetres(String text) {
    return text.matches("\\d{1,3}(\\.\\d{1,4})?") ? Double.parseDouble(text) : 0;
  }

  private static Packages builtIn() {
    try (InputStream in = Packages.class.getResourceAsStream("packages.csv")) {
      if (in == null) {
        throw new IllegalStateException("packages.csv is missing from the program");
      }
      return new Packages(read(new InputStreamReader(in, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Row> read(Reader table) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    List<Row> rows = new ArrayList<>();
    for (CSVRecord record : format.parse(table)) {
      try {
        rows.add(Row.of(record));
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException(
            "package table, row " + (record.getRecordNumber() + 1) + ": " + e.getMessage(), e);
      }
    }
    return rows;
  }

  /** One row of the table; sizes in millimetres. */
  private record Row(
      String family,
      int fewest,
      int most,
      PackageLayout layout,
      double pitch,
      double row,
      double along,
      double across,
      String source) {

    static Row of(CSVRecord record) {
      String[] counts = record.get("pins").split("-", -1);
      PackageLayout layout =
          PackageLayout.valueOf(record.get("layout").toUpperCase(Locale.ROOT).replace('-', '_'));
      double row = layout == PackageLayout.DUAL ? size(record, "row") : 0;
      return new Row(
          record.get("family").toUpperCase(Locale.ROOT),
          Integer.parseInt(counts[0]),
          Integer.parseInt(counts[counts.length - 1]),
          layout,
          size(record, "pitch"),
          row,
          record.get("along").isEmpty() ? 0 : size(record, "along"),
          size(record, "across"),
          record.get("source"));
    }

    private static double size(CSVRecord record, String column) {
      double size = millimetres(record.get(column));
      if (size == 0) {
        throw new IllegalArgumentException(
            "%s must be a length in millimetres, not \"%s\"".formatted(column, record.get(column)));
      }
      return size;
    }

    boolean dual() {
      return layout == PackageLayout.DUAL;
    }

    /** The pin count that a name asks of this row; 0 if it is not of this row. */
    int countIn(String name) {
      if (fewest == most) {
        return name.equals(family) ? most : 0;
      }
      if (!name.startsWith(family + "-")) {
        return 0;
      }
      String digits = name.substring(family.length() + 1);
      int count = digits.matches("\\d{1,3}") ? Integer.parseInt(digits) : 0;
      boolean even = !dual() || count % 2 == 0;
      return count >= fewest && count <= most && even ? count : 0;
    }

    PackageShape shape(String name, int count, double pitch, double across) {
      List<Point> pins = layout.pins(count, pitch, across);
      Point centre = Extent.around(pins).centre();
      double length = along > 0 ? along : Extent.around(pins).height() + pitch;
      double width = across == row ? this.across : across - (row - this.across);
      return new PackageShape(name, pins, layout.body(centre, length, width), source);
    }
  }
}
