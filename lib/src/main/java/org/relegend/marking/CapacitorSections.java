package org.relegend.marking;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the marking of capacitors with several sections in one can: "40u+40u+20u 450V", "8+8 450",
 * "20/450 + 20/25", "40/20/10uF 450V", "2x50u 450V" (common practice). A unit told once counts for
 * the sections without, none at all is microfarads; a rating behind the last section counts for all
 * when no other has its own. A dash tells neither sections nor a range, so "16-16" isn't read.
 */
public final class CapacitorSections {
  private static final String VOLTS =
      "(?<volts>[0-9]{1,4}(?:[.,][0-9]{1,2})?) ?(?<wave>V ?DC|V ?AC|V~|V=|WVDC|VDCW|WV|VW|V)?";

  private static final String FARADS =
      "(?<farads>[0-9]{1,5}(?:[.,][0-9]{1,3})?) ?(?<unit>[unpµU]F?|mfd|MFD|Mfd|MF)?";

  private static final Pattern SECTION =
      Pattern.compile("(?:(?<count>[2-9]) ?[xX] ?)?" + FARADS + "(?:(?: | ?/ ?)" + VOLTS + ")?");

  /** Sections between slashes need their unit and their rating, else they may be anything. */
  private static final Pattern SLASHED =
      Pattern.compile(
          "(?<list>[0-9]{1,4}(?:/[0-9]{1,4}){1,3}) ?(?<unit>[uµU]F?|mfd|MFD|Mfd)(?: | ?/ ?)(?<rest>[0-9].*)");

  /** More than were ever put into one can; keeps hostile texts short. */
  private static final int MOST = 9;

  private CapacitorSections() {}

  /**
   * The sections in the order written; empty where the text tells of no sections or can't be read
   * as sections without doubt.
   */
  public static List<CapacitorSection> of(String text) {
    if (!MarkingText.fault(text).isEmpty()) {
      return List.of();
    }
    String plain = MarkingText.plain(text);
    Matcher slashed = SLASHED.matcher(plain);
    if (slashed.matches()) {
      String unit = slashed.group("unit");
      String sum = String.join("+", List.of(slashed.group("list").split("/", -1)));
      plain = sum + unit + " " + slashed.group("rest");
    }
    List<Section> read = read(plain);
    return read.size() < 2 || read.size() > MOST ? List.of() : text(read);
  }

  /** The whole can as one reading: the sum of its sections, which are told beside it. */
  static Optional<ValueReading> reading(String text) {
    List<CapacitorSection> sections = of(text);
    if (sections.isEmpty()) {
      return Optional.empty();
    }
    Set<Amount> ratings = new LinkedHashSet<>();
    sections.forEach(section -> section.rating().ifPresent(ratings::add));
    Amount sum = new Amount(Quantity.CAPACITANCE, sum(sections));
    String why =
        "%d sections in one can (common practice); the value is their sum"
            .formatted(sections.size());
    return Optional.of(
        new ValueReading(
            sum, Optional.empty(), List.copyOf(ratings), List.of(), why, sections, List.of()));
  }

  private static double sum(List<CapacitorSection> sections) {
    BigDecimal sum = BigDecimal.ZERO;
    for (CapacitorSection section : sections) {
      sum = sum.add(BigDecimal.valueOf(section.capacitance().value()));
    }
    return sum.doubleValue();
  }

  /** One section as written: its unit may stand with another; counted ones share their part. */
  private record Section(int part, Numeral number, String unit, Optional<Amount> rating) {}

  private static List<Section> read(String text) {
    List<Section> sections = new ArrayList<>();
    int part = 0;
    for (String written : text.split(" ?\\+ ?", -1)) {
      Matcher matcher = SECTION.matcher(written);
      Optional<Numeral> farads =
          matcher.matches() ? Numeral.at(matcher.group("farads"), 0) : Optional.empty();
      if (farads.isEmpty() || farads.get().digits() == 0) {
        return List.of();
      }
      String unit = Optional.ofNullable(matcher.group("unit")).orElse("");
      Section section = new Section(part++, farads.get(), unit, rating(matcher));
      String count = Optional.ofNullable(matcher.group("count")).orElse("1");
      sections.addAll(Collections.nCopies(Integer.parseInt(count), section));
    }
    return sections;
  }

  private static Optional<Amount> rating(Matcher matcher) {
    String volts = matcher.group("volts");
    if (volts == null) {
      return Optional.empty();
    }
    String wave = Optional.ofNullable(matcher.group("wave")).orElse("");
    Waveform form =
        wave.contains("AC") || wave.contains("~")
            ? Waveform.AC
            : wave.contains("D") || wave.contains("=") ? Waveform.DC : Waveform.UNSTATED;
    return Numeral.at(volts, 0)
        .filter(number -> number.digits() > 0)
        .map(number -> new Amount(Quantity.VOLTAGE, number.times(0), form));
  }

  private static List<CapacitorSection> text(List<Section> read) {
    Section end = read.get(read.size() - 1);
    List<Section> rated = read.stream().filter(each -> each.rating().isPresent()).toList();
    boolean shared =
        end.rating().isPresent() && rated.stream().allMatch(each -> each.part() == end.part());
    if (!rated.isEmpty() && rated.size() < read.size() && !shared) {
      return List.of(); // which of the ratings holds for a section without can't be told
    }
    List<CapacitorSection> sections = new ArrayList<>();
    for (int at = 0; at < read.size(); at++) {
      Section section = read.get(at);
      Amount farads =
          new Amount(Quantity.CAPACITANCE, section.number().times(exponent(unit(read, at))));
      sections.add(new CapacitorSection(farads, shared ? end.rating() : section.rating()));
    }
    return List.copyOf(sections);
  }

  /** Its own unit, else that of the next section which has one, else of the one before. */
  private static String unit(List<Section> read, int at) {
    for (int next = at; next < read.size(); next++) {
      if (!read.get(next).unit().isEmpty()) {
        return read.get(next).unit();
      }
    }
    for (int before = at; before >= 0; before--) {
      if (!read.get(before).unit().isEmpty()) {
        return read.get(before).unit();
      }
    }
    return "u";
  }

  private static int exponent(String unit) {
    return switch (unit.charAt(0)) {
      case 'n' -> -9;
      case 'p' -> -12;
      default -> -6;
    };
  }
}
