package org.relegend.map;

import java.util.Comparator;

/** One pin of one part: R101.1, C102.+, U102.7. */
public record PinRef(PartId part, String pin) implements Comparable<PinRef> {
  private static final Comparator<PinRef> ORDER =
      Comparator.comparing(PinRef::part).thenComparing(PinRef::pin, NameRules.NATURAL);

  public PinRef {
    Pin.checkedNumber(pin);
  }

  /**
   * Reads "PART.PIN"; the first dot divides, since no part id has one.
   *
   * @throws IllegalArgumentException where the text isn't so
   */
  public static PinRef parse(String text) {
    int dot = text.indexOf('.');
    if (dot < 1 || dot == text.length() - 1) {
      throw new IllegalArgumentException(
          "\"" + NameRules.printable(text) + "\" names no pin: write it as PART.PIN, like R101.1");
    }
    return new PinRef(new PartId(text.substring(0, dot)), text.substring(dot + 1));
  }

  @Override
  public int compareTo(PinRef other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return part + "." + pin;
  }
}
