package org.relegend.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.relegend.map.Designator;

/**
 * Class letters of reference designators and what they can mean, after IEEE 315, older equipment
 * manuals and common practice (the table names the source of each). Letters with several meanings
 * keep them all: RV is a varistor or a variable resistor, and only the circuit can tell.
 */
public final class ClassLetters {
  /** One meaning of class letters. */
  public record Meaning(String letters, String meaning, String source) {}

  /** "1A2R3" and "A1-R3" name R3 of an assembly; "R17A" is one of a matched group. */
  private static final Pattern LAST_PART =
      Pattern.compile("(?:.*[\\d-])?(\\p{Alpha}+)\\d+\\p{Alpha}?");

  private static final Map<String, List<Meaning>> TABLE = read();

  private ClassLetters() {}

  /** The class letters of a designator, in upper case; nothing where it isn't built that way. */
  public static Optional<String> of(Designator designator) {
    Matcher matcher = LAST_PART.matcher(designator.text());
    return matcher.matches()
        ? Optional.of(matcher.group(1).toUpperCase(java.util.Locale.ROOT))
        : Optional.empty();
  }

  /** All that these letters can mean; empty for letters of no known class. */
  public static List<Meaning> meanings(String letters) {
    return TABLE.getOrDefault(letters.toUpperCase(java.util.Locale.ROOT), List.of());
  }

  private static Map<String, List<Meaning>> read() {
    Map<String, List<Meaning>> table = new TreeMap<>();
    for (KindTable.Row row : KindTable.resource("letters.csv", "letters", "meaning", "source")) {
      String letters = row.cell("letters");
      table
          .computeIfAbsent(letters, key -> new ArrayList<>())
          .add(new Meaning(letters, row.cell("meaning"), row.cell("source")));
    }
    return table;
  }
}
