package org.relegend.marking;

import java.util.Optional;

/**
 * Maker numbers of the EIA source code, as far as the sources told them: two collectors' lists on
 * potentiometer codes and a magazine article on loudspeakers. There are hundreds more; a number
 * that is not here is as good as one that is.
 */
public enum EiaMaker {
  CENTRALAB(134, "Centralab"),
  CTS(137, "CTS"),
  GENERAL_ELECTRIC(188, "General Electric"),
  JENSEN(220, "Jensen"),
  STACKPOLE(304, "Stackpole"),
  UTAH(328, "Utah"),
  ALTEC(391, "Altec"),
  /** The source names the goods, not the maker. */
  TRANSFORMERS_606(606, "a maker of transformers"),
  ELECTRO_VOICE(649, "Electro-Voice");

  private final int number;
  private final String title;

  EiaMaker(int number, String title) {
    this.number = number;
    this.title = title;
  }

  public int number() {
    return number;
  }

  /** The maker's name, as "CTS". */
  public String title() {
    return title;
  }

  public static Optional<EiaMaker> of(int number) {
    for (EiaMaker maker : values()) {
      if (maker.number == number) {
        return Optional.of(maker);
      }
    }
    return Optional.empty();
  }
}
