package org.relegend.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.relegend.map.Pin;

/** Reads what people write as the role of a pin: "out X", "Ta+Tb emitters", "sec centre tap". */
final class RoleReader {
  /** A plus that divides two words, not the one of "+in" or "V+". */
  private static final Pattern AND = Pattern.compile("(?<=[\\p{L}\\d])\\+(?=[\\p{L}\\d])");

  /** Counts windings; a higher number behind one is a voltage: "primary 115". */
  private static final Pattern COUNT = Pattern.compile("[1-4]");

  private final Kind kind;
  private final List<Pin> pins;
  private final Optional<Pinout> pinout;

  RoleReader(Kind kind, List<Pin> pins, String casing) {
    this.kind = kind;
    this.pins = pins;
    this.pinout = surePinout(casing);
  }

  /**
   * The pinout of the part, where there is no doubt: the type or the stated package decides for it,
   * it contradicts no role that is told, and it is the only such one, or the one with just these
   * pins, or all such say the same of these pins.
   */
  private Optional<Pinout> surePinout(String casing) {
    List<String> numbers = pins.stream().map(Pin::number).toList();
    List<Pinout> fitting = kind.fitting(pins, casing);
    if (fitting.stream().map(p -> numbers.stream().map(p::at).toList()).distinct().count() == 1) {
      return fitting.stream().findFirst();
    }
    List<Pinout> exact =
        fitting.stream().filter(p -> p.numbers().equals(new HashSet<>(numbers))).toList();
    return exact.size() == 1 && kind.type().isEmpty()
        ? Optional.of(exact.get(0))
        : Optional.empty();
  }

  List<Terminal> terminals() {
    Map<String, List<Terminal>> byRole = new HashMap<>();
    for (Pin pin : pins) {
      byRole.put(pin.number(), read(kind, pin));
    }
    Map<String, String> renamed = renamedSections(byRole);
    List<Terminal> result = new ArrayList<>();
    for (Pin pin : pins) {
      List<Terminal> lines = byRole.getOrDefault(pin.number(), List.of());
      List<Terminal> usual = pinout.map(found -> found.at(pin.number())).orElse(List.of());
      if (lines.isEmpty()) {
        usual.forEach(t -> result.add(t.in(renamed.getOrDefault(t.section(), t.section()))));
      } else {
        lines.forEach(terminal -> result.add(placed(terminal, usual, renamed)));
      }
      if (lines.isEmpty() && usual.isEmpty()) {
        result.add(new Terminal(pin.number(), "", pin.role()));
      }
    }
    return result;
  }

  /** A role told without its section belongs where the pinout has that role at that pin. */
  private static Terminal placed(
      Terminal result, List<Terminal> usual, Map<String, String> renamed) {
    if (!result.section().isEmpty()) {
      return result;
    }
    return usual.stream()
        .filter(terminal -> terminal.role().equals(result.role()))
        .findFirst()
        .map(t -> t.in(renamed.getOrDefault(t.section(), t.section())))
        .orElse(result);
  }

  /** Where pins are told to be of section A that the pinout has in X, X is called A throughout. */
  private Map<String, String> renamedSections(Map<String, List<Terminal>> byRole) {
    Map<String, String> renamed = new HashMap<>();
    byRole.forEach(
        (number, lines) -> {
          List<Terminal> usual = pinout.map(found -> found.at(number)).orElse(List.of());
          if (lines.size() == 1 && usual.size() == 1 && !lines.get(0).section().isEmpty()) {
            renamed.putIfAbsent(usual.get(0).section(), lines.get(0).section());
          }
        });
    return renamed;
  }

  /** What the words of a pin's role say; nothing where the kind can't make sense of them. */
  static List<Terminal> read(Kind kind, Pin pin) {
    String text = pin.role().strip();
    if (text.isEmpty()) {
      return List.of();
    }
    List<Terminal> plain = roles(kind, pin, List.of(""), text);
    if (!plain.isEmpty() || !kind.sectioned()) {
      return plain;
    }
    List<Terminal> winding = afterSectionWord(kind, pin, text);
    return winding.isEmpty() ? besideSectionName(kind, pin, text) : winding;
  }

  /** "primary", "sec a", "secondary 2 tap": a word for a section of the kind, and what is left. */
  private static List<Terminal> afterSectionWord(Kind kind, Pin pin, String text) {
    String[] words = text.split("\\s+");
    for (int used = words.length; used > 0; used--) {
      String word = join(words, 0, used).toLowerCase(Locale.ROOT);
      String section = kind.sectionWords().get(word);
      if (section == null && used > 1 && COUNT.matcher(words[used - 1]).matches()) {
        String counted = kind.sectionWords().get(withoutCount(word));
        section = counted == null ? null : counted + " " + words[used - 1];
      }
      if (section != null) {
        String rest = join(words, used, words.length);
        List<Terminal> lines = roles(kind, pin, List.of(section), rest);
        return lines.isEmpty() && (rest.isEmpty() || isUniform(kind, section))
            ? List.of(new Terminal(pin.number(), section, onlyRole(kind, section, pin.number())))
            : lines;
      }
    }
    return List.of();
  }

  /**
   * The section of the pinouts that a section of this name is one of: "secondary 2" a secondary.
   */
  static Optional<String> template(Kind kind, String section) {
    String word = section.toLowerCase(Locale.ROOT);
    return Optional.ofNullable(kind.sectionWords().get(word))
        .or(() -> Optional.ofNullable(kind.sectionWords().get(withoutCount(word))));
  }

  private static String withoutCount(String word) {
    return word.replaceFirst("\\s+[1-4]$", "");
  }

  /**
   * The role of a pin of which only the section is told: by its number, else the section's first.
   */
  private static String onlyRole(Kind kind, String section, String number) {
    List<Terminal> all =
        kind.pinouts().stream().flatMap(pinout -> usual(kind, pinout, section).stream()).toList();
    return all.stream()
        .filter(terminal -> terminal.number().equals(number))
        .findFirst()
        .or(() -> all.stream().findFirst())
        .map(Terminal::role)
        .orElse("");
  }

  /**
   * Whether all pins of the section do alike, as the ends of a coil: then no word makes them else.
   */
  private static boolean isUniform(Kind kind, String section) {
    return usual(kind, kind.pinouts().get(0), section).stream()
            .map(Terminal::role)
            .distinct()
            .count()
        == 1;
  }

  private static List<Terminal> usual(Kind kind, Pinout pinout, String section) {
    String template = template(kind, section).orElse(section);
    return pinout.terminals().stream()
        .filter(terminal -> terminal.section().equals(template))
        .toList();
  }

  /**
   * "out X", "Ta+Tb emitters": a role of the kind, and before or after it a name for the section.
   */
  private static List<Terminal> besideSectionName(Kind kind, Pin pin, String text) {
    String[] words = text.split("\\s+");
    for (int cut = words.length - 1; cut > 0; cut--) {
      String head = join(words, 0, cut);
      String tail = join(words, cut, words.length);
      List<Terminal> roleFirst = roles(kind, pin, sections(tail), head);
      List<Terminal> roleLast = roles(kind, pin, sections(head), tail);
      if (!roleFirst.isEmpty() || !roleLast.isEmpty()) {
        return roleFirst.isEmpty() ? roleLast : roleFirst;
      }
    }
    return List.of();
  }

  /** The sections that a text names; none where it can't be a name, as with quotation marks. */
  private static List<String> sections(String text) {
    return text.indexOf('"') < 0 ? List.of(AND.split(text)) : List.of();
  }

  /**
   * The roles these words name, in each of the sections; nothing where one of them is unknown.
   * Roles that stand outside of the sections in the pinouts (a substrate, a screen) do so here too.
   */
  private static List<Terminal> roles(Kind kind, Pin pin, List<String> sections, String text) {
    List<Terminal> result = new ArrayList<>();
    List<String> words = kind.role(text).isPresent() ? List.of(text) : List.of(AND.split(text));
    for (String word : words) {
      Optional<String> role = kind.role(word);
      if (role.isEmpty()) {
        return List.of();
      }
      boolean outside =
          kind.pinouts().stream()
              .flatMap(pinout -> pinout.terminals().stream())
              .filter(terminal -> terminal.role().equals(role.get()))
              .allMatch(terminal -> terminal.section().isEmpty());
      for (String section : outside ? List.of("") : sections) {
        result.add(new Terminal(pin.number(), section, role.get()));
      }
    }
    return result;
  }

  private static String join(String[] words, int from, int to) {
    return String.join(" ", List.of(words).subList(from, to));
  }
}
