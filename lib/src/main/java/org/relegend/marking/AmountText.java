package org.relegend.marking;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/** Writes amounts, always with a prefix that leaves one to three digits before the point. */
final class AmountText {
  /** Four figures are the most the letter and digit code has forms for (IEC 60062, as 59R04). */
  private static final int CODE_FIGURES = 4;

  private AmountText() {}

  static String spaced(Amount amount, int figures) {
    if (figures < 1 || figures > 15) {
      throw new IllegalArgumentException("figures must be 1 to 15, not " + figures);
    }
    BigDecimal rounded = rounded(amount, figures);
    DecimalPrefix prefix = prefix(amount.quantity(), rounded);
    String unit = prefix.symbol + amount.quantity().unit();
    String text = digits(rounded, prefix) + (unit.isEmpty() ? "" : " " + unit);
    return amount.waveform() == Waveform.UNSTATED ? text : text + " " + amount.waveform();
  }

  static String code(Amount amount) {
    if (amount.value() < 0) {
      throw new IllegalArgumentException("no part code for a negative value: " + amount.value());
    }
    BigDecimal rounded = rounded(amount, CODE_FIGURES);
    DecimalPrefix prefix = prefix(amount.quantity(), rounded);
    String digits = digits(rounded, prefix);
    String symbol = prefix == DecimalPrefix.MICRO ? "u" : prefix.symbol;
    return switch (amount.quantity()) {
      case RESISTANCE -> resistance(rounded);
      case CAPACITANCE -> pointed(digits, prefix == DecimalPrefix.NONE ? "F" : symbol);
      case INDUCTANCE ->
          prefix == DecimalPrefix.NONE ? pointed(digits, "H") : pointed(digits, symbol) + "H";
      case VOLTAGE -> prefix == DecimalPrefix.NONE ? volts(digits) : digits + symbol + "V";
      default -> digits + symbol + amount.quantity().unit();
    };
  }

  private static String resistance(BigDecimal ohms) {
    // the code writes what is below 1 Ω with R too: 0R47
    DecimalPrefix prefix =
        ohms.compareTo(BigDecimal.ONE) < 0 ? DecimalPrefix.NONE : prefix(Quantity.RESISTANCE, ohms);
    return pointed(digits(ohms, prefix), prefix == DecimalPrefix.NONE ? "R" : prefix.symbol);
  }

  /** "4.7" with "k" is 4k7; "1" is 1k0; "47" is 47k. */
  private static String pointed(String digits, String letter) {
    int point = digits.indexOf('.');
    if (point >= 0) {
      return digits.substring(0, point) + letter + digits.substring(point + 1);
    }
    return digits.length() == 1 && !digits.equals("0") ? digits + letter + "0" : digits + letter;
  }

  private static String volts(String digits) {
    return digits.contains(".") ? pointed(digits, "V") : digits + "V";
  }

  private static BigDecimal rounded(Amount amount, int figures) {
    return BigDecimal.valueOf(amount.value()).round(new MathContext(figures, RoundingMode.HALF_UP));
  }

  private static String digits(BigDecimal value, DecimalPrefix prefix) {
    BigDecimal scaled = value.scaleByPowerOfTen(-prefix.exponent);
    return scaled.signum() == 0 ? "0" : scaled.stripTrailingZeros().toPlainString();
  }

  /** The largest prefix of the quantity that leaves at least 1 before the point. */
  private static DecimalPrefix prefix(Quantity quantity, BigDecimal value) {
    if (value.signum() == 0) {
      return DecimalPrefix.NONE;
    }
    List<DecimalPrefix> prefixes = quantity.prefixes();
    DecimalPrefix found = prefixes.get(0);
    for (DecimalPrefix prefix : prefixes) {
      if (value.abs().compareTo(BigDecimal.ONE.scaleByPowerOfTen(prefix.exponent)) >= 0) {
        found = prefix;
      }
    }
    return found;
  }
}
