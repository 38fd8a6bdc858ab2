package org.relegend.marking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One meaning of the letters after a number: "k", "kΩ", "nF", "VAC".
 *
 * @param exponent the power of ten that the letters stand for
 * @param expected counts only where this quantity is expected: "10k" is a frequency on a crystal
 *     alone
 * @param remark for the user, where the spelling is old or careless; else empty
 */
record UnitOfMeasure(
    Quantity quantity, int exponent, Waveform waveform, boolean expected, String remark) {
  private static final Map<String, List<UnitOfMeasure>> TABLE = table();

  /** All meanings of these letters, likeliest first; none if they are no unit. */
  static List<UnitOfMeasure> of(String letters) {
    return TABLE.getOrDefault(letters, List.of());
  }

  private static Map<String, List<UnitOfMeasure>> table() {
    Map<String, List<UnitOfMeasure>> table = new HashMap<>();
    spelled(
        table, Quantity.RESISTANCE, "Ω ohm ohms Ohm Ohms OHM OHMS", "m:-3 :0 k:3 K:3 M:6 G:9 T:12");
    spelled(
        table, Quantity.CAPACITANCE, "F f farad", "p:-12 P:-12 n:-9 N:-9 u:-6 U:-6 µ:-6 m:-3 :0");
    spelled(table, Quantity.INDUCTANCE, "H h henry", "n:-9 N:-9 u:-6 U:-6 µ:-6 m:-3 :0");
    spelled(table, Quantity.VOLTAGE, "V v volt volts Volt Volts", "u:-6 µ:-6 m:-3 :0 k:3 K:3");
    spelled(table, Quantity.CURRENT, "A amp amps Amp Amps", "p:-12 n:-9 u:-6 µ:-6 m:-3 :0 k:3");
    spelled(table, Quantity.POWER, "W w watt watts Watt Watts", "u:-6 µ:-6 m:-3 :0 k:3 K:3");
    spelled(table, Quantity.APPARENT_POWER, "VA", "m:-3 :0 k:3");
    spelled(table, Quantity.FREQUENCY, "Hz hz HZ", "m:-3 :0 k:3 K:3 M:6 G:9");
    spelled(table, Quantity.TIME, "s sec", "p:-12 n:-9 u:-6 µ:-6 m:-3 :0");
    waveforms(table);
    lone(table);
    old(table);
    table.replaceAll((letters, meanings) -> List.copyOf(meanings));
    return Map.copyOf(table);
  }

  /** Prefix and unit; prefixes are given as "letter:exponent". */
  private static void spelled(
      Map<String, List<UnitOfMeasure>> table, Quantity quantity, String units, String prefixes) {
    for (String unit : units.split(" ")) {
      for (String prefix : prefixes.split(" ")) {
        int colon = prefix.indexOf(':');
        int exponent = Integer.parseInt(prefix.substring(colon + 1));
        add(table, prefix.substring(0, colon) + unit, quantity, exponent, false, "");
      }
    }
  }

  private static void waveforms(Map<String, List<UnitOfMeasure>> table) {
    for (String prefix : List.of("", "m", "k")) {
      int exponent = prefix.isEmpty() ? 0 : prefix.equals("m") ? -3 : 3;
      for (String unit : List.of("VAC", "Vac", "V~", "Vrms", "VRMS")) {
        table.put(prefix + unit, voltage(Quantity.VOLTAGE, exponent, Waveform.AC));
      }
      for (String unit : List.of("VDC", "Vdc", "V=")) {
        table.put(prefix + unit, voltage(Quantity.VOLTAGE, exponent, Waveform.DC));
      }
    }
  }

  private static List<UnitOfMeasure> voltage(Quantity quantity, int exponent, Waveform waveform) {
    return List.of(new UnitOfMeasure(quantity, exponent, waveform, false, ""));
  }

  /** A letter alone: the prefix letters and R, L of IEC 60062 (L for milliohm is from memory). */
  private static void lone(Map<String, List<UnitOfMeasure>> table) {
    for (String letter : List.of("R", "r")) {
      add(table, letter, Quantity.RESISTANCE, 0, false, "");
    }
    prefix(table, "k K", 3, List.of(Quantity.RESISTANCE), List.of(Quantity.FREQUENCY));
    prefix(table, "M", 6, List.of(Quantity.RESISTANCE), List.of(Quantity.FREQUENCY));
    prefix(table, "G", 9, List.of(Quantity.RESISTANCE), List.of(Quantity.FREQUENCY));
    prefix(table, "T", 12, List.of(Quantity.RESISTANCE), List.of());
    List<Quantity> reactances = List.of(Quantity.CAPACITANCE, Quantity.INDUCTANCE);
    List<Quantity> meters = List.of(Quantity.VOLTAGE, Quantity.CURRENT, Quantity.TIME);
    prefix(table, "m", -3, reactances, List.of(Quantity.RESISTANCE, Quantity.POWER));
    prefix(table, "m", -3, List.of(), meters);
    prefix(table, "u U µ", -6, reactances, meters);
    prefix(table, "n N", -9, reactances, List.of(Quantity.CURRENT, Quantity.TIME));
    prefix(table, "p P", -12, List.of(Quantity.CAPACITANCE), List.of(Quantity.CURRENT));
    prefix(table, "k K", 3, List.of(), List.of(Quantity.VOLTAGE));
    add(table, "L", Quantity.RESISTANCE, -3, true, "L stands for milliohm");
    add(table, "R", Quantity.INDUCTANCE, -6, true, "R stands for microhenries on coils");
  }

  private static void prefix(
      Map<String, List<UnitOfMeasure>> table,
      String letters,
      int exponent,
      List<Quantity> open,
      List<Quantity> expected) {
    for (String letter : letters.split(" ")) {
      open.forEach(quantity -> add(table, letter, quantity, exponent, false, ""));
      expected.forEach(quantity -> add(table, letter, quantity, exponent, true, ""));
    }
  }

  /** Spellings of older drawings and of upper-case-only lists (common practice). */
  private static void old(Map<String, List<UnitOfMeasure>> table) {
    for (String meg : List.of("meg", "Meg", "MEG")) {
      add(table, meg, Quantity.RESISTANCE, 6, false, "");
    }
    for (String micro : List.of("mfd", "MFD", "Mfd", "ufd", "UFD", "µfd", "MF", "mF")) {
      add(table, micro, Quantity.CAPACITANCE, -6, false, micro + " as older drawings write µF");
    }
    for (String pico :
        List.of("mmf", "MMF", "mmfd", "MMFD", "pfd", "PFD", "uuF", "uuf", "µµF", "UUF")) {
      add(table, pico, Quantity.CAPACITANCE, -12, false, pico + " as older drawings write pF");
    }
    add(table, "MA", Quantity.CURRENT, -3, false, "MA as upper-case lists write mA");
    add(table, "MH", Quantity.INDUCTANCE, -3, false, "MH as upper-case lists write mH");
    add(table, "M", Quantity.CAPACITANCE, -6, true, "M as older drawings write µF");
    add(table, "m", Quantity.RESISTANCE, 6, true, "a small m where M may be meant");
  }

  private static void add(
      Map<String, List<UnitOfMeasure>> table,
      String letters,
      Quantity quantity,
      int exponent,
      boolean expected,
      String remark) {
    UnitOfMeasure unit = new UnitOfMeasure(quantity, exponent, Waveform.UNSTATED, expected, remark);
    table.computeIfAbsent(letters, key -> new ArrayList<>()).add(unit);
  }
}
