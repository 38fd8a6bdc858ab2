package org.relegend.circuit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.relegend.map.NameRules;
import org.relegend.map.Pin;

/** Makes kinds of the rows of a table; the columns are explained at the top of kinds.csv. */
final class KindReader {
  static final String[] COLUMNS = {
    "kind",
    "aliases",
    "family",
    "letters",
    "quantity",
    "through",
    "polarity",
    "traits",
    "rest",
    "package",
    "pins",
    "paths",
    "barrier",
    "source"
  };

  /** SECTION/word[number=role ...], or number=role. */
  private static final Pattern ITEM =
      Pattern.compile("([^\\s\\[\\]]+)\\[([^\\]]*)\\]|([^\\s\\[\\]]+)");

  private static final Pattern PATH = Pattern.compile("(\\S+?)~(\\S+)\\s+([a-z]+)(?:@(\\S+))?");

  private final Map<String, String> sectionWords = new HashMap<>();

  private KindReader() {}

  static List<Kind> kinds(List<KindTable.Row> rows) throws KindsException {
    Map<String, List<KindTable.Row>> byName = new LinkedHashMap<>();
    for (KindTable.Row row : rows) {
      if (!row.cell("kind").matches("[a-z0-9][a-z0-9-]*")) {
        throw row.fault("kind", "the name of a kind: small letters, digits and hyphens");
      }
      byName.computeIfAbsent(row.cell("kind"), name -> new ArrayList<>()).add(row);
    }
    List<Kind> kinds = new ArrayList<>();
    for (List<KindTable.Row> ofOne : byName.values()) {
      kinds.add(new KindReader().kind(ofOne));
    }
    return kinds;
  }

  private Kind kind(List<KindTable.Row> rows) throws KindsException {
    KindTable.Row first = rows.get(0);
    List<Pinout> pinouts = new ArrayList<>();
    for (KindTable.Row row : rows) {
      if (!row.cell("pins").isEmpty()) {
        pinouts.add(new Pinout(row.cell("package"), pins(row), row.cell("source")));
      }
    }
    if (first.cell("family").isEmpty()) {
      throw first.fault("family", "a family: say what the kind is in the widest sense");
    }
    Set<String> roles = new HashSet<>();
    pinouts.forEach(pinout -> pinout.terminals().forEach(terminal -> roles.add(terminal.role())));
    List<RolePath> paths = paths(first, roles);
    return new Kind(
        first.cell("kind"),
        first.words("aliases", ';'),
        first.cell("family"),
        first.words("letters", ';'),
        word(first, "quantity", Kind.ValueQuantity.values(), Kind.ValueQuantity::word)
            .orElse(Kind.ValueQuantity.NONE),
        word(first, "through", Passage.values(), Passage::word),
        polarity(first, roles),
        traits(first),
        first.cell("rest"),
        pinouts,
        paths,
        barrier(first, roles),
        RoleWords.of(roles),
        sectionWords,
        Kind.Numbering.BY_TYPE,
        "");
  }

  private static <T> Optional<T> word(
      KindTable.Row row, String column, T[] all, Function<T, String> word) throws KindsException {
    String text = row.cell(column);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    List<String> words = new ArrayList<>();
    for (T candidate : all) {
      if (word.apply(candidate).equals(text)) {
        return Optional.of(candidate);
      }
      words.add(word.apply(candidate));
    }
    throw row.fault(column, "one of " + String.join(", ", words));
  }

  private static Set<Kind.Trait> traits(KindTable.Row row) throws KindsException {
    Set<Kind.Trait> traits = EnumSet.noneOf(Kind.Trait.class);
    for (String word : row.words("traits", ';')) {
      Kind.Trait trait = null;
      for (Kind.Trait candidate : Kind.Trait.values()) {
        trait = candidate.word().equals(word) ? candidate : trait;
      }
      if (trait == null) {
        throw row.fault(
            "traits",
            "made of the words inlet, mains, open, varied and high-voltage, divided by ;");
      }
      traits.add(trait);
    }
    return traits;
  }

  /** The pins of a row of a table of types. */
  static List<Terminal> pinsOf(KindTable.Row row) throws KindsException {
    return new KindReader().pins(row);
  }

  private List<Terminal> pins(KindTable.Row row) throws KindsException {
    List<Terminal> terminals = new ArrayList<>();
    Matcher items = ITEM.matcher(row.cell("pins"));
    int end = 0;
    while (items.find()) {
      if (!row.cell("pins").substring(end, items.start()).isBlank()) {
        break;
      }
      end = items.end();
      if (items.group(3) != null) {
        terminals.add(terminal(row, "", items.group(3)));
        continue;
      }
      String section = section(items.group(1));
      for (String pin : items.group(2).strip().split("\\s+")) {
        terminals.add(terminal(row, section, pin));
      }
    }
    if (end != row.cell("pins").length()) {
      throw row.fault("pins", "made of number=role and section[number=role ...]");
    }
    return terminals;
  }

  private String section(String words) {
    String[] all = words.replace('_', ' ').split("/");
    for (String word : all) {
      sectionWords.put(word.toLowerCase(Locale.ROOT), all[0]);
    }
    return all[0];
  }

  private static Terminal terminal(KindTable.Row row, String section, String text)
      throws KindsException {
    int equals = text.indexOf('=');
    if (equals < 1 || equals == text.length() - 1) {
      throw row.fault("pins", "readable at \"" + text + "\": write number=role");
    }
    String role = text.substring(equals + 1).replace('_', ' ');
    Pin pin;
    try {
      pin = new Pin(text.substring(0, equals), role);
      NameRules.checked("role", role);
      NameRules.checked("section", section.isEmpty() ? "none" : section);
    } catch (IllegalArgumentException e) {
      throw row.fault("pins", "what pins can be: " + e.getMessage());
    }
    return new Terminal(pin.number(), section, pin.role());
  }

  private static List<RolePath> paths(KindTable.Row row, Set<String> roles) throws KindsException {
    List<RolePath> paths = new ArrayList<>();
    for (String text : row.words("paths", ';')) {
      Matcher matcher = PATH.matcher(text);
      if (!matcher.matches()) {
        throw row.fault("paths", "made of role~role and a word, divided by ;");
      }
      paths.add(
          new RolePath(
              role(row, "paths", roles, matcher.group(1)),
              role(row, "paths", roles, matcher.group(2)),
              conduction(row, matcher.group(3)),
              matcher.group(4) == null ? "" : matcher.group(4)));
    }
    return paths;
  }

  private static Conduction conduction(KindTable.Row row, String word) throws KindsException {
    for (Conduction conduction : Conduction.values()) {
      if (conduction.word().equals(word)) {
        return conduction;
      }
    }
    throw row.fault(
        "paths",
        "readable at \""
            + word
            + "\": it is one of wire, contact, ohmic, winding, junction, gated,"
            + " capacitive, internal");
  }

  private static Optional<Kind.Polarity> polarity(KindTable.Row row, Set<String> roles)
      throws KindsException {
    String text = row.cell("polarity");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String[] sides = text.split(">", -1);
    if (sides.length != 2) {
      throw row.fault("polarity", "two roles as positive>negative");
    }
    return Optional.of(
        new Kind.Polarity(
            role(row, "polarity", roles, sides[0]), role(row, "polarity", roles, sides[1])));
  }

  private List<String> barrier(KindTable.Row row, Set<String> roles) throws KindsException {
    List<String> groups = new ArrayList<>();
    for (String word : row.words("barrier", '|')) {
      String name = word.replace('_', ' ');
      boolean section = sectionWords.containsValue(name);
      groups.add(section ? name : role(row, "barrier", roles, word));
    }
    return groups;
  }

  private static String role(KindTable.Row row, String column, Set<String> roles, String word)
      throws KindsException {
    String role = word.replace('_', ' ');
    if (!role.equals(Terminal.ANY) && !roles.contains(role)) {
      throw row.fault(column, "readable: no pin of the kind has the role \"" + role + "\"");
    }
    return role;
  }
}
