package org.relegend.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The common types of part with their packages and pinouts, known by the names the trade gives
 * them. The tables types-*.csv explain their columns; each row names its source.
 */
public final class PartTypes {
  static final String[] COLUMNS = {
    "type", "aliases", "prefixes", "suffixes", "kind", "package", "pins", "source"
  };

  /** One package of one type, and all names that leave it. */
  record Row(String type, String kind, Pinout pinout, Set<String> keys) {
    Row {
      keys = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(keys));
    }
  }

  private static final List<String> TABLES =
      List.of("transistors", "diodes", "linear", "logic", "valves", "parts");

  /** A word that reads as the number of a type, whether or not it is known. */
  private static final Pattern LIKE_A_TYPE =
      Pattern.compile(
          "(?:[A-Z]{1,5}\\d{2,5}|\\d[NSA][A-Z]{0,2}\\d{2,5}|\\d{1,2}[A-Z]{1,2}\\d)\\w*");

  private static final PartTypes STANDARD = new PartTypes(readAll());

  private final List<Row> rows;
  private final Map<String, List<Row>> byKey = new HashMap<>();

  private PartTypes(List<Row> rows) {
    this.rows = List.copyOf(rows);
    for (Row row : rows) {
      row.keys().forEach(key -> byKey.computeIfAbsent(key, k -> new ArrayList<>(1)).add(row));
    }
  }

  /** The types that come with the program. */
  public static PartTypes standard() {
    return STANDARD;
  }

  List<Row> rows() {
    return rows;
  }

  /**
   * The one type that a text names: as a whole, or by one of its words. Nothing where it names
   * several types, or none that is known.
   */
  public Optional<PartType> find(String text) {
    Optional<PartType> whole = one(text);
    if (whole.isPresent()) {
      return whole;
    }
    PartType found = null;
    for (String word : words(text)) {
      Optional<PartType> named = one(word);
      if (named.isPresent() && found != null && !found.name().equals(named.get().name())) {
        return Optional.empty();
      }
      if (named.isPresent() && (found == null || pinouts(named.get()) < pinouts(found))) {
        found = named.get();
      } else if (named.isEmpty() && isLikeType(word)) {
        return Optional.empty();
      }
    }
    return Optional.ofNullable(found);
  }

  private static int pinouts(PartType type) {
    return type.pinouts().size();
  }

  /** Whether a word of the text is a type, or reads as a type's number. */
  boolean namesType(String text) {
    return words(text).stream().anyMatch(word -> isLikeType(word) || byKey.containsKey(key(word)));
  }

  private static boolean isLikeType(String word) {
    return LIKE_A_TYPE.matcher(key(word)).matches();
  }

  private static List<String> words(String text) {
    return List.of(text.strip().split("[\\s,;/()=]+"));
  }

  private Optional<PartType> one(String text) {
    List<Row> named = byKey.get(key(text));
    if (named == null) {
      return Optional.empty();
    }
    Row first = named.get(0);
    List<Pinout> pinouts = named.stream().map(Row::pinout).toList();
    return Optional.of(new PartType(first.type(), text.strip(), first.kind(), pinouts));
  }

  static String key(String text) {
    return text.toUpperCase(Locale.ROOT)
        .replace('\u00b5', 'U')
        .replace('\u03bc', 'U')
        .replace('\u039c', 'U')
        .replaceAll("[\\s._-]+", "");
  }

  private static List<Row> readAll() {
    List<Row> rows = new ArrayList<>();
    for (String table : TABLES) {
      for (KindTable.Row cells : KindTable.resource("types-" + table + ".csv", COLUMNS)) {
        try {
          rows.add(row(cells));
        } catch (KindsException e) {
          throw new IllegalStateException("the program's own table of types is damaged", e);
        }
      }
    }
    return rows;
  }

  private static Row row(KindTable.Row cells) throws KindsException {
    Pinout pinout =
        new Pinout(cells.cell("package"), KindReader.pinsOf(cells), cells.cell("source"));
    return new Row(cells.cell("type"), cells.cell("kind"), pinout, keys(cells));
  }

  /** Each name with each prefix and each suffix; "-" is none. */
  private static Set<String> keys(KindTable.Row cells) {
    List<String> names = new ArrayList<>(List.of(cells.cell("type")));
    names.addAll(cells.words("aliases", ';'));
    Set<String> keys = new LinkedHashSet<>();
    for (String prefix : affixes(cells, "prefixes")) {
      for (String name : names) {
        affixes(cells, "suffixes").forEach(suffix -> keys.add(key(prefix + name + suffix)));
      }
    }
    return keys;
  }

  private static List<String> affixes(KindTable.Row cells, String column) {
    List<String> words = cells.words(column, ' ');
    return words.isEmpty()
        ? List.of("")
        : words.stream().map(word -> word.equals("-") ? "" : word).toList();
  }
}
