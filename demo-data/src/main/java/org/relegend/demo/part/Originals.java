package org.relegend.demo.part;

import java.util.List;
import org.relegend.demo.design.PlacedPart;
import org.relegend.demo.draw.Noise;

/** The bodies the factory fitted, by kind and value. Makers and type numbers are made up. */
final class Originals {
  private static final int WHITE = 0xD9D7CE;
  private static final int BLACK = 0x1A1918;

  private Originals() {}

  static Fitting of(PlacedPart part) {
    String value = part.value();
    return switch (part.kind()) {
      case "resistor" -> resistor(value);
      case "resistor-mains" -> fit(Style.RESISTOR, 9, 3.2, 3, 0x8E6A4A, BLACK);
      case "pot" -> fit(Style.PRESET, 9, 9, 4, 0x9A6A3A, BLACK);
      case "cap" -> capacitor(value);
      case "cap-mains" -> fit(Style.BOX_CAPACITOR, 14, 7, 12, 0xB9B6A6, BLACK, "100n", "275~ X");
      case "cap-pol" -> polarised(part);
      case "npn", "pnp", "njfet" -> transistor(part);
      case "diode" -> fit(Style.GLASS_DIODE, 4, 1.9, 2, 0x9C4F22, BLACK);
      case "zener" -> fit(Style.GLASS_DIODE, 4.8, 2.4, 2, 0x6F767C, 0x14202E);
      case "bridge" -> fit(Style.ROUND_BRIDGE, 9.2, 9.2, 5.5, 0x1D1D1F, WHITE, "QB1");
      case "jack" -> fit(Style.JACK, 9, 9, 12, 0x18181A, WHITE);
      case "meter-jack" -> fit(Style.HEADER, 8, 7, 7, 0xD9D3BF, BLACK);
      case "mains-terminal" -> fit(Style.TERMINAL_BLOCK, 18, 10, 11, 0x24262A, WHITE);
      case "fuse" -> fit(Style.FUSE, 22, 7, 8, 0xCFD6D2, BLACK);
      case "switch-dpst" -> fit(Style.SWITCH, 14, 16, 11, 0x202124, WHITE, "2A 250~");
      case "transformer" ->
          fit(Style.TRANSFORMER, 40, 36, 33, 0xC9A63A, BLACK, "230~ 17-0-17", "6VA 7832");
      case "npn-array" -> fit(Style.DIP, 19, 6.3, 4.2, 0x232325, 0xB9B7AF, "Q514", "7829");
      case "dual-opamp" -> fit(Style.DIP, 9.6, 6.3, 4.2, 0x232325, 0xB9B7AF, "Q282", date(part));
      default -> throw new IllegalArgumentException("no body for a part of kind " + part.kind());
    };
  }

  private static Fitting resistor(String value) {
    if (value.endsWith("1W")) {
      return fit(Style.RESISTOR, 8.4, 3.3, 3.4, 0xB99B7A, BLACK);
    }
    if (value.endsWith("0.5W")) {
      return fit(Style.RESISTOR, 7.8, 2.9, 3, 0xC6A981, BLACK);
    }
    return fit(Style.RESISTOR, 6.4, 2.3, 2.4, 0xC9AE84, BLACK);
  }

  private static Fitting capacitor(String value) {
    if (value.contains("film")) {
      return fit(Style.BOX_CAPACITOR, 9.2, 4.6, 8.5, 0xB0442F, 0xE2D9C4, "1u0 100");
    }
    if (value.contains("polystyrene")) {
      return fit(Style.POLYSTYRENE, 5.4, 3.6, 3.8, 0xC5CACD, 0x22333F, "47p");
    }
    return fit(Style.DISC, 7, 2.2, 8, 0xB98545, BLACK, "100n");
  }

  private static Fitting polarised(PlacedPart part) {
    String value = part.value();
    if (value.contains("bead")) {
      return value.startsWith("10u")
          ? fit(Style.BEAD, 4.8, 4.2, 6.4, 0xC9902E, BLACK, "10", "25+", date(part))
          : fit(Style.BEAD, 4.0, 3.6, 5.6, 0x2F62A8, 0xE6E2D6, "1u", "35+");
    }
    if (value.startsWith("1000u")) {
      return fit(Style.UPRIGHT_AXIAL, 10.5, 10.5, 25, 0x35538A, 0xE6E2D6, "1000u", "40V", "7831");
    }
    return fit(Style.CAN, 8, 8, 12.5, 0x3A5C93, 0xE6E2D6, "100u", "25V", "7830");
  }

  private static Fitting transistor(PlacedPart part) {
    if (part.value().startsWith("medium-power")) {
      String type = part.kind().equals("npn") ? "QN40" : "QP40";
      return fit(Style.METAL_CAN, 8.2, 8.2, 6.4, 0xCDCFD2, 0x2B2B2B, type, "7828");
    }
    String type =
        switch (part.kind()) {
          case "npn" -> "QN8";
          case "pnp" -> "QP8";
          default -> "QJ3";
        };
    return fit(Style.TO92, 4.7, 4.0, 4.8, 0x1F1F20, 0xBDBBB3, type, date(part));
  }

  /** Weeks 26 to 32 of 1978, as the factory's stock had them. */
  private static String date(PlacedPart part) {
    return "78" + (26 + (int) (7 * Noise.of(78, part.designator(), 0)));
  }

  private static Fitting fit(
      Style style, double length, double width, double height, int body, int ink, String... marks) {
    return new Fitting(style, length, width, height, body, ink, List.of(marks), false);
  }
}
