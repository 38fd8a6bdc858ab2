package org.relegend.solve;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The usual device of a kind, and of the types that the trade meets most. Figures are typical ones
 * of data sheets and handbooks; lib/docs/solver.md names the source of each.
 */
final class HandbookModels {
  private static final double VOLT_SPREAD = 0.01;
  private static final Pattern FIXED = Pattern.compile("7[89][A-Z]{0,2}(\\d\\d)");
  private static final Pattern POWER =
      Pattern.compile(".*(2N3055|2N3773|TIP\\d|BD\\d|MJ|MJE|2S[CA]5200|2S[CA]1943|BUX|BDX).*");

  private HandbookModels() {}

  private static String type(String value) {
    return value.strip().toUpperCase(Locale.ROOT);
  }

  /** Silicon unless kind or type tells another. */
  static Junction diode(String kind, String value) {
    String type = type(value);
    if (kind.contains("germanium") || type.matches(".*(1N34|OA\\d|AA1\\d\\d|1N60|1N270).*")) {
      return Junction.diode(2e-6, 1.6);
    }
    if (kind.contains("schottky") || type.matches(".*(1N58\\d\\d|BAT\\d|SB\\d).*")) {
      return Junction.diode(1e-7, 1.05);
    }
    if (type.matches(".*(1N400\\d|1N54\\d\\d|BY\\d|UF4).*")) {
      return Junction.diode(7e-9, 1.8);
    }
    return Junction.diode(2.5e-9, 1.75);
  }

  /** Red where no colour is told. */
  static Junction led(String value) {
    String type = type(value);
    if (type.contains("BLUE") || type.contains("WHITE")) {
      return Junction.diode(1e-27, 2);
    }
    return type.contains("GREEN") ? Junction.diode(5e-20, 2) : Junction.diode(2e-18, 2);
  }

  static Junction zener(double volts) {
    double ohms = volts < 5 ? 60 : volts < 10 ? 10 : 30;
    return Junction.diode(1e-14, 1).breakingAt(volts, 5e-3, ohms, 0.03);
  }

  static BipolarTransistor bipolar(int polarity, String kind, String value) {
    if (kind.contains("germanium")) {
      return new BipolarTransistor(polarity, 2e-6, 80, 5, 50, 0.02, 0.5);
    }
    if (POWER.matcher(type(value)).matches()) {
      return new BipolarTransistor(polarity, 1e-12, 70, 3, 100, VOLT_SPREAD, 0.4);
    }
    return new BipolarTransistor(polarity, 1.5e-14, 250, 4, 80, VOLT_SPREAD, 0.4);
  }

  /** Threshold and current at zero bias by type. */
  static FieldEffectTransistor junctionFet(int polarity, String value) {
    String type = type(value);
    double pinchOff = 2;
    double current = 5e-3;
    if (type.contains("J201")) {
      pinchOff = 0.8;
      current = 0.6e-3;
    } else if (type.contains("2N5457")) {
      pinchOff = 1.5;
      current = 3e-3;
    } else if (type.contains("2N3819")) {
      pinchOff = 3;
      current = 10e-3;
    } else if (type.contains("2SK170")) {
      pinchOff = 0.5;
      current = 8e-3;
    }
    return new FieldEffectTransistor(
        polarity,
        false,
        -pinchOff,
        current / (pinchOff * pinchOff),
        0.01,
        1e-14,
        0.2 * pinchOff,
        0.15);
  }

  static FieldEffectTransistor insulatedFet(int polarity, String value) {
    boolean small = type(value).matches(".*(2N7000|BS170|BS250|VN10|ZVN).*");
    return small
        ? new FieldEffectTransistor(polarity, true, 2.1, 0.2, 0.01, 1e-13, 0.3, 0.2)
        : new FieldEffectTransistor(polarity, true, 3.5, 3, 0.005, 1e-12, 0.4, 0.2);
  }

  static OperationalAmplifier amplifier(String value) {
    String type = type(value);
    if (type.matches(".*(TL0[678]\\d|LF3\\d\\d|LF4\\d\\d|OPA21\\d\\d|OPA13\\d).*")) {
      return opamp(2e5, 3e6, 65e-12, 1e12, 1.5, 1.5, 1.4e-3, 2e-3);
    }
    if (type.matches(".*(5532|5534|LM833|33078).*")) {
      return opamp(1e5, 10e6, 200e-9, 3e5, 1.5, 1.5, 4e-3, 0.5e-3);
    }
    if (type.matches(".*(LM358|LM324|LM2904|LM2902|NJM2904).*")) {
      return opamp(1e5, 1e6, -45e-9, 5e6, 1.5, 0.02, 0.5e-3, 2e-3);
    }
    if (type.matches(".*(4558|4559|4560|2068).*")) {
      return opamp(1e5, 3e6, -60e-9, 2e6, 1, 1, 1.5e-3, 1e-3);
    }
    return opamp(2e5, 1e6, 80e-9, 2e6, 1, 1, 1.7e-3, 1.5e-3);
  }

  private static OperationalAmplifier opamp(
      double gain,
      double bandwidth,
      double bias,
      double input,
      double below,
      double above,
      double draw,
      double offsetSpread) {
    return new OperationalAmplifier(
        gain, bandwidth, 0, bias, input, 75, 25e-3, below, above, draw, offsetSpread);
  }

  static OpenCollectorComparator comparator() {
    return new OpenCollectorComparator(2e5, -25e-9, 60, 16e-3, 0.4e-3);
  }

  /** The volts that a fixed regulator's type tells; not a number where it tells none. */
  static double fixedVolts(String value) {
    Matcher matcher = FIXED.matcher(type(value));
    return matcher.find() ? Integer.parseInt(matcher.group(1)) : Double.NaN;
  }

  static LinearRegulator regulator(int polarity, double volts) {
    return new LinearRegulator(polarity, volts, 2, 0.02, 1.5, 5e-3, 0.015);
  }

  static LinearRegulator adjustable() {
    return new LinearRegulator(1, 1.25, 2, 0.02, 1.5, 50e-6, 0.015);
  }

  static ShuntReference reference(double volts) {
    return new ShuntReference(volts, 2, 2e-6, 0.01);
  }

  /** Koren's figures by type; those of the commonest valve else. */
  static Valve valve(boolean pentode, String value) {
    String type = type(value);
    for (NamedValve named : VALVES) {
      if (named.law().pentode() == pentode && type.matches(".*(" + named.types() + ").*")) {
        return named.law();
      }
    }
    return VALVES.stream()
        .map(NamedValve::law)
        .filter(law -> law.pentode() == pentode)
        .findFirst()
        .orElseThrow();
  }

  private record NamedValve(String types, Valve law) {}

  private static final List<NamedValve> VALVES =
      List.of(
          new NamedValve("ECC83|12AX7|7025", new Valve(false, 100, 1.4, 1060, 1, 600, 300, 0.1)),
          new NamedValve("ECC82|12AU7", new Valve(false, 21.5, 1.3, 1180, 1, 84, 300, 0.1)),
          new NamedValve("ECC81|12AT7", new Valve(false, 60, 1.35, 460, 1, 300, 300, 0.1)),
          new NamedValve("ECC88|6DJ8|6922", new Valve(false, 28, 1.3, 330, 1, 320, 300, 0.1)),
          new NamedValve("EL84|6BQ5", new Valve(true, 21.29, 1.24, 401.7, 4500, 111.04, 17.9, 0.1)),
          new NamedValve("EL34|6CA7", new Valve(true, 11, 1.35, 650, 4200, 60, 24, 0.1)),
          new NamedValve("6L6|5881", new Valve(true, 8.7, 1.35, 1460, 4500, 48, 12, 0.1)));
}
