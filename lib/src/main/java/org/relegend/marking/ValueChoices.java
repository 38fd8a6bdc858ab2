package org.relegend.marking;

import java.util.List;

/** All readings of a value in one sentence, with what would decide between them. */
public final class ValueChoices {
  private ValueChoices() {}

  /** "4.7 kΩ"; of several "100 nF, or 104 pF: its size or a meter out of circuit decides". */
  public static String text(List<ValueReading> readings) {
    List<String> amounts = readings.stream().map(each -> each.amount().text()).distinct().toList();
    String text = String.join(", or ", amounts);
    return amounts.size() > 1 ? text + ": " + decides(readings) : text;
  }

  /** What would decide between readings of different amounts. */
  private static String decides(List<ValueReading> readings) {
    List<Quantity> quantities =
        readings.stream().map(each -> each.amount().quantity()).distinct().toList();
    if (quantities.size() > 1) {
      return "the part's kind decides";
    }
    return switch (quantities.get(0)) {
      case CAPACITANCE, INDUCTANCE -> "its size or a meter out of circuit decides";
      case RESISTANCE -> "a meter out of circuit decides";
      default -> "the drawing or the maker's list decides";
    };
  }
}
