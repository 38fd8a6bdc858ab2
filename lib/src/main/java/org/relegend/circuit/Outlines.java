package org.relegend.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The packages that pinouts hold for, under the names that drawings and lists of parts give them:
 * "DIL14" and "14-pin DIP" are "DIP-14". From outlines.csv, where each row names its source.
 */
public final class Outlines {
  /**
   * One package.
   *
   * @param pins the numbers of its pins, a can's body counted where it is a pin
   */
  public record Outline(String name, List<String> aliases, List<String> pins, String source) {
    public Outline {
      aliases = List.copyOf(aliases);
      pins = List.copyOf(pins);
    }
  }

  private static final Pattern ROW_OF_PINS =
      Pattern.compile("(?:P|C|CER|PLASTIC|CERAMIC)?(DIP|DIL|SIP|SIL)(?:300|600)?(\\d{1,2})");
  private static final Pattern COUNT_FIRST =
      Pattern.compile("(\\d{1,2})(?:PIN|LEAD)?(?:P|C|CER|PLASTIC|CERAMIC)?(DIP|DIL|SIP|SIL)");

  private static final Map<String, Outline> BY_NAME = read();

  private Outlines() {}

  /** The package of this name, where it is one of the table's or of pins in rows. */
  public static Optional<Outline> find(String name) {
    String key = key(name.strip().split("/", 2)[0]);
    Outline listed = BY_NAME.get(key);
    return listed != null ? Optional.of(listed) : inRows(key);
  }

  /** All that the table lists; those of pins in rows are known by any count besides. */
  static List<Outline> listed() {
    return BY_NAME.values().stream().distinct().toList();
  }

  /** Whether two names are of one package; a name that isn't known is only like itself. */
  public static boolean same(String one, String other) {
    Optional<Outline> known = find(one);
    return known.isPresent()
        ? known.equals(find(other))
        : one.strip().equalsIgnoreCase(other.strip());
  }

  private static Optional<Outline> inRows(String key) {
    Matcher first = ROW_OF_PINS.matcher(key);
    Matcher last = COUNT_FIRST.matcher(key);
    if (first.matches()) {
      return Optional.of(inRows(first.group(1), Integer.parseInt(first.group(2))));
    }
    return last.matches()
        ? Optional.of(inRows(last.group(2), Integer.parseInt(last.group(1))))
        : Optional.empty();
  }

  private static Outline inRows(String word, int count) {
    String family = word.startsWith("D") ? "DIP" : "SIP";
    List<String> pins = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      pins.add(Integer.toString(i));
    }
    return new Outline(family + "-" + count, List.of(), pins, "pins are counted: common practice");
  }

  private static String key(String name) {
    return name.toUpperCase(Locale.ROOT).replaceAll("[\\s_.-]+", "");
  }

  private static Map<String, Outline> read() {
    Map<String, Outline> byName = new HashMap<>();
    for (KindTable.Row row :
        KindTable.resource("outlines.csv", "package", "aliases", "pins", "source")) {
      Outline outline =
          new Outline(
              row.cell("package"),
              row.words("aliases", ';'),
              row.words("pins", ' '),
              row.cell("source"));
      byName.put(key(outline.name()), outline);
      outline.aliases().forEach(alias -> byName.put(key(alias), outline));
    }
    return Map.copyOf(byName);
  }
}
