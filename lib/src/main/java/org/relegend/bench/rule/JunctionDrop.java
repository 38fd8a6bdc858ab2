package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.Reading;
import org.relegend.finding.Severity;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Quantity;

/**
 * The drop across a junction: of silicon half a volt and a little more while it conducts. Far more
 * is an open junction, nothing at all a short one (or one that is off, as its twin tells). Read at
 * two nodes under power, or at the part itself with a meter's diode test.
 */
final class JunctionDrop implements ReadingRule {
  /** Far above what any junction has, also one of little drop at its full current. */
  static final double MOST = 0.9;

  /**
   * Least and most drop in a meter's diode test, in volts; and the least of one that conducts in
   * circuit. Figures for Schottky and germanium are common practice.
   */
  private enum Material {
    SILICON("silicon", 0.4, MOST),
    SCHOTTKY("a Schottky diode", 0.15, 0.45),
    GERMANIUM("germanium", 0.2, 0.4);

    private final String word;
    private final double least;
    private final double most;

    Material(String word, double least, double most) {
      this.word = word;
      this.least = least;
      this.most = most;
    }

    /** As the part's kind or value tells; silicon where neither does. */
    static Material of(UnitReadings unit, PartId id) {
      String text =
          unit.map()
              .part(id)
              .map(part -> (part.kind() + " " + part.value()).toLowerCase(Locale.ROOT))
              .orElse("");
      if (text.contains("schottky")) {
        return SCHOTTKY;
      }
      return text.contains("germanium") ? GERMANIUM : SILICON;
    }
  }

  /** Less than this between the two sides is no drop at all. */
  private static final double NOTHING = 0.05;

  private static final List<String[]> JUNCTIONS =
      List.of(new String[] {"base", "emitter"}, new String[] {"anode", "cathode"});

  @Override
  public String code() {
    return "junction-drop";
  }

  @Override
  public String source() {
    return "US Army TM 11-6125-256-34 and transistor fault-finding texts: 0.5 to 0.7 V; base and"
        + " emitter alike is a short, far above 0.7 V an open junction; Schottky 0.15 to 0.45 V and germanium"
        + " 0.2 to 0.4 V in the diode test by common practice";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (Part part : unit.map().parts()) {
      boolean silicon =
          unit.kind(part.id())
              .map(kind -> !kind.name().equals("zener") && !kind.name().equals("led"))
              .orElse(false);
      if (silicon
          && (unit.isFamily(part.id(), "transistor") || unit.isFamily(part.id(), "diode"))) {
        for (CircuitElement element : unit.elements(part.id())) {
          underPower(unit, element).ifPresent(found::add);
        }
      }
    }
    unit.job().currentReadings().forEach(reading -> diodeTest(unit, reading).ifPresent(found::add));
    return found;
  }

  /** The sign that makes a junction's forward drop positive: a PNP's runs from emitter to base. */
  private static double sign(UnitReadings unit, PartId part) {
    boolean pnp = unit.kind(part).map(kind -> kind.name().startsWith("pnp")).orElse(false);
    return pnp ? -1 : 1;
  }

  /** A Darlington's base and emitter have two junctions between them (common practice). */
  private static double most(UnitReadings unit, PartId part) {
    boolean two = unit.kind(part).map(kind -> kind.name().endsWith("-darlington")).orElse(false);
    return two ? 2 * MOST : MOST;
  }

  private Optional<RuleFinding> underPower(UnitReadings unit, CircuitElement element) {
    for (String[] roles : JUNCTIONS) {
      Optional<NetVoltage> from = element.volts(roles[0]);
      Optional<NetVoltage> to = element.volts(roles[1]);
      boolean read = from.isPresent() && to.isPresent() && (from.get().read() || to.get().read());
      if (read) {
        double sign = sign(unit, element.part());
        double drop = sign * (from.get().value() - to.get().value());
        double slack = from.get().uncertainty() + to.get().uncertainty();
        if (drop > most(unit, element.part()) + slack) {
          return Optional.of(open(element, roles, drop));
        }
        Optional<NetVoltage> a = element.healthy(roles[0]);
        Optional<NetVoltage> b = element.healthy(roles[1]);
        boolean conducts =
            a.isPresent()
                && b.isPresent()
                && sign * (a.get().value() - b.get().value())
                    >= Material.of(unit, element.part()).least;
        if (conducts && Math.abs(drop) < NOTHING) {
          return Optional.of(shorted(element, roles, drop));
        }
        if (conducts && drop < -NOTHING - slack) {
          return Optional.of(off(element, roles, drop));
        }
      }
    }
    return Optional.empty();
  }

  private RuleFinding open(CircuitElement element, String[] roles, double drop) {
    return finding(
        element,
        Severity.ERROR,
        "%s has %s from %s to %s, far above what a junction that conducts can have: it is open, or a joint of it is."
            .formatted(element.name(), NetVoltage.text(drop), roles[0], roles[1]),
        LikelihoodRatio.STRONG,
        "its junction has " + NetVoltage.text(drop) + " across it, so it doesn't conduct");
  }

  private RuleFinding shorted(CircuitElement element, String[] roles, double drop) {
    return finding(
        element,
        Severity.ERROR,
        "%s has %s between %s and %s where a healthy one has a junction's drop: shorted, or bridged."
            .formatted(element.name(), NetVoltage.text(Math.abs(drop)), roles[0], roles[1]),
        LikelihoodRatio.STRONG,
        "no drop across its junction, where a healthy one has half a volt and more");
  }

  private RuleFinding off(CircuitElement element, String[] roles, double drop) {
    return finding(
        element,
        Severity.WARNING,
        "%s is held off: its %s lies %s the wrong way from its %s, where a healthy one conducts."
            .formatted(element.name(), roles[0], NetVoltage.text(-drop), roles[1]),
        LikelihoodRatio.WEAK,
        "its junction is reversed, where a healthy one conducts; what sets its "
            + roles[0]
            + " may be the cause");
  }

  private RuleFinding finding(
      CircuitElement element, Severity severity, String message, double factor, String reason) {
    return new RuleFinding(
        code(),
        severity,
        List.of(Subject.of(element.part())),
        message,
        UnitHazards.BEFORE_TOUCHING + "test the junction both ways, and its joints.",
        source(),
        List.of(new LikelihoodRatio(element.part(), factor, reason)));
  }

  private Optional<RuleFinding> diodeTest(UnitReadings unit, Reading reading) {
    Optional<PartId> part = partOf(reading.at());
    if (part.isEmpty() || !isDiodeTest(reading)) {
      return Optional.empty();
    }
    boolean junction =
        unit.isFamily(part.get(), "transistor")
            || unit.kind(part.get()).map(kind -> kind.name().equals("diode")).orElse(false);
    double drop = Math.abs(reading.value());
    Material material = Material.of(unit, part.get());
    double most = material == Material.SILICON ? most(unit, part.get()) : material.most;
    if (!junction || drop >= material.least && drop <= most) {
      return Optional.empty();
    }
    String name = unit.map().nameOf(reading.at());
    return Optional.of(
        new RuleFinding(
            code(),
            Severity.ERROR,
            List.of(reading.at()),
            drop < material.least
                ? "%s drops %s in the diode test, less than %s does: shorted, or something beside it conducts."
                    .formatted(name, NetVoltage.text(drop), material.word)
                : "%s drops %s in the diode test, more than %s does: open."
                    .formatted(name, NetVoltage.text(drop), material.word),
            "Lift one leg and test again: in circuit other parts conduct too.",
            source(),
            List.of(
                new LikelihoodRatio(
                    part.get(),
                    reading.setting().lifted() ? LikelihoodRatio.STRONG : LikelihoodRatio.MEDIUM,
                    "drops %s in the diode test".formatted(NetVoltage.text(drop))))));
  }

  /**
   * A meter tests a junction with the unit off or the part out of it; else it is a live voltage.
   */
  private static boolean isDiodeTest(Reading reading) {
    boolean stated =
        reading.setting().lifted()
            || reading.setting().power() == MeasurementSetup.Power.OFF
            || reading.setting().words().toLowerCase(Locale.ROOT).contains("diode test");
    return reading.quantity() == Quantity.VOLTAGE
        && stated
        && reading.setting().power() != MeasurementSetup.Power.ON;
  }

  private static Optional<PartId> partOf(Subject at) {
    if (at instanceof Subject.OfPart of) {
      return Optional.of(of.part());
    }
    return at instanceof Subject.OfSection of ? Optional.of(of.part()) : Optional.empty();
  }
}
