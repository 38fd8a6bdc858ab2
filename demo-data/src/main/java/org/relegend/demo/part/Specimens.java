package org.relegend.demo.part;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Link;
import org.relegend.demo.design.PlacedPart;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.design.Tables;
import org.relegend.demo.draw.Noise;
import org.relegend.demo.route.WrongBoard;

/** The two units of the leveller's board that the demo has photos of, and units of other boards. */
public final class Specimens {
  private Specimens() {}

  /** The unit on the bench, with the rework that its condition table tells of. */
  public static Specimen first() {
    Design design = Tables.leveller();
    Map<String, Fitting> replaced = new TreeMap<>();
    replaced.put(
        "U102",
        original(design, "U102")
            .styled(Style.SOCKETED_DIP)
            .coloured(0x2B2B30, 0xE9E9E4)
            .marked("QX282", "9114")
            .resoldered());
    replaced.put("U101", original(design, "U101").marked("Q514", "7829").resoldered());
    replaced.put(
        "C202",
        original(design, "C202")
            .styled(Style.CAN)
            .sized(5, 5, 11)
            .coloured(0x23242A, 0xCFCFC8)
            .marked("10u", "50V", "9112")
            .resoldered());
    replaced.put(
        "C2",
        original(design, "C2")
            .styled(Style.CAN)
            .sized(12.5, 12.5, 25)
            .coloured(0x1F2E4A, 0xD9D9D2)
            .marked("1000u", "63V", "9108")
            .resoldered());
    replaced.put("Q101", original(design, "Q101").resoldered());
    replaced.put(
        "R4",
        original(design, "R4")
            .styled(Style.STOOD_OFF_RESISTOR)
            .sized(8.6, 3.4, 6.5)
            .coloured(0x7F8E96, 0)
            .resoldered());
    replaced.put("C102", original(design, "C102").marked("10", "25+", "7830"));
    Link repair = new Link("A_VC2", pin(design, "U101", "5"), pin(design, "R111", "2"));
    return new Specimen(
        design,
        Tables.levellerArtwork(),
        7836,
        replaced,
        List.of(design.part("R4").at()),
        List.of(repair));
  }

  /** Another unit of the same board: another past, other replacements. */
  public static Specimen second() {
    Design design = Tables.leveller();
    Map<String, Fitting> replaced = new TreeMap<>();
    for (String part : List.of("C102", "C202")) {
      replaced.put(
          part,
          original(design, part)
              .styled(Style.CAN)
              .sized(5, 5, 9)
              .coloured(0x6A2F2A, 0xD9C9A0)
              .marked("10u", "35V", "8440")
              .resoldered());
    }
    for (String part : List.of("C2", "C3")) {
      replaced.put(
          part,
          original(design, part)
              .styled(Style.CAN)
              .sized(12.8, 12.8, 20)
              .coloured(0x3B3B3F, 0xC9A94A)
              .marked("1000u", "50V", "8738")
              .resoldered());
    }
    replaced.put(
        "C101",
        original(design, "C101").coloured(0x3A6EA5, 0xE6E6E0).marked("1u 63-").resoldered());
    replaced.put(
        "C204",
        original(design, "C204").coloured(0xC9B23A, 0x222222).marked("1u0 63").resoldered());
    replaced.put(
        "U201",
        original(design, "U201").styled(Style.SOCKETED_DIP).marked("Q514A", "8503").resoldered());
    replaced.put(
        "C5",
        original(design, "C5")
            .coloured(0x26272B, 0xC9A94A)
            .sized(8, 8, 11.5)
            .marked("100u", "35V", "8740")
            .resoldered());
    replaced.put("R112", original(design, "R112").coloured(0x6FA3B5, 0).resoldered());
    replaced.put("R219", original(design, "R219").coloured(0x6FA3B5, 0).resoldered());
    replaced.put("Q203", original(design, "Q203").marked("QJ3A", "8502").resoldered());
    return new Specimen(design, Tables.levellerArtwork(), 7911, replaced, List.of(), List.of());
  }

  /**
   * The same unit with a share of its bodies, in percent, exchanged for others of other makers:
   * other colours, beads against cans.
   */
  public static Specimen refitted(Specimen unit, int percent) {
    int[] bodies = {0x6FA3B5, 0x8C8F94, 0x3F5F3A, 0xC2B280, 0x5A2B2B, 0x23242A};
    Map<String, Fitting> others = new TreeMap<>();
    for (PlacedPart part : unit.design().parts()) {
      if (100 * Noise.of(unit.seed(), part.designator(), 91) < percent) {
        int body = bodies[(int) (bodies.length * Noise.of(unit.seed(), part.designator(), 92))];
        Fitting fitted = unit.fitted(part).coloured(body, 0xDADAD2).resoldered();
        others.put(
            part.designator(),
            fitted.style() == Style.BEAD ? fitted.styled(Style.CAN).sized(5, 5, 8) : fitted);
      }
    }
    return unit.with(others);
  }

  /** A unit of another board of the same maker, one a seed. */
  public static Specimen wrong(long seed) {
    Design design = WrongBoard.design(seed);
    return new Specimen(design, WrongBoard.artwork(design), seed, Map.of(), List.of(), List.of());
  }

  private static Fitting original(Design design, String designator) {
    return Originals.of(design.part(designator));
  }

  private static Spot pin(Design design, String part, String name) {
    PlacedPin pin = design.pinsOf(part).get(name);
    if (pin == null) {
      throw new IllegalArgumentException(part + " has no pin " + name);
    }
    return pin.at();
  }
}
