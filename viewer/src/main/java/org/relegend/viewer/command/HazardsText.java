package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.relegend.hazard.Caution;
import org.relegend.hazard.Cautions;
import org.relegend.hazard.DischargeText;
import org.relegend.hazard.HazardousNode;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.MainsReach;
import org.relegend.hazard.StoredCharge;
import org.relegend.hazard.UnmarkedHazard;
import org.relegend.hazard.VoltageLimits;
import org.relegend.map.BoardMap;
import org.relegend.map.NameRules;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/**
 * Hazards for people to read: the caution that counts most before any figure, the others in full
 * after the answer.
 */
record HazardsText(BoardMap map, Hazards hazards) {
  private static final int FIGURES = 3;

  /** The caution that stands before the answer. */
  private static final String FIRST = "map";

  /** Columns of a line, where its words allow it. */
  private static final int WIDTH = 100;

  void print(PrintWriter out) {
    caution(out, Cautions.of(FIRST));
    line(
        out,
        "Unplug first, discharge, and measure before touching. All cautions stand at the end.");
    out.println();
    VoltageLimits limits = hazards.limits();
    line(
        out,
        "Counted as high: above %s AC, %s DC (%s; %s)",
        amount(limits.acVolts(), Quantity.VOLTAGE),
        amount(limits.dcVolts(), Quantity.VOLTAGE),
        limits.title(),
        limits.source());
    reached(out);
    new SuspectText(map, hazards).print(out);
    barriers(out);
    unmarked(out);
    charges(out);
    out.println();
    Cautions.all().stream()
        .filter(caution -> !caution.key().equals(FIRST))
        .forEach(caution -> caution(out, caution));
  }

  private static void caution(PrintWriter out, Caution caution) {
    line(out, "%s. %s", caution.title(), caution.text());
  }

  private void reached(PrintWriter out) {
    if (hazards.reached().isEmpty()) {
      line(out, "No net is known to carry mains or high voltage: that is not known, not absent.");
      noVolts(out);
      return;
    }
    line(out, "Mains and high voltage reach:");
    TextTable table = new TextTable();
    for (HazardousNode reached : hazards.reached()) {
      table.row(
          HazardsCommand.nameOf(map, reached.node()),
          reached.kind().word(),
          pins(reached.pins()),
          reached.through().isEmpty() ? "" : "through " + parts(reached.through()));
    }
    table.print(out, "  ");
    noVolts(out);
  }

  private void noVolts(PrintWriter out) {
    hazards
        .noVolts()
        .forEach(
            net ->
                line(
                    out,
                    "  No voltage is given for %s: take it as high.",
                    map.nameOf(Subject.of(net))));
  }

  private void barriers(PrintWriter out) {
    MainsReach mains = hazards.mains();
    for (MainsReach.Barrier barrier : mains.barriers()) {
      String name = map.nameOf(barrier.part());
      line(
          out,
          "%s: mains at %s; kept from %s%s",
          name,
          pins(barrier.near()),
          barrier.far().isEmpty() ? "nothing" : pins(barrier.far()),
          barrier.far().isEmpty() ? "" : ", if its pins are as the map says");
      if (barrier.failure().isPresent()) {
        boolean shorted = barrier.failure().get() == MainsReach.Barrier.Failure.SHORTED;
        line(
            out,
            "  It does not isolate: %s.",
            shorted || barrier.way().isEmpty()
                ? "both sides are joined to the mains"
                : "mains comes round through " + parts(barrier.way()));
      }
    }
    for (MainsReach.Bridge bridge : mains.bridges()) {
      line(
          out,
          "%s bridges the isolation%s%s.",
          map.nameOf(bridge.near().part()),
          passing(bridge.amps()),
          bridge.walked() ? ": its far side is taken as mains" : "");
    }
    for (PartId part : mains.earthed().stream().map(step -> step.in().part()).distinct().toList()) {
      line(out, "%s leads from the mains to protective earth.", map.nameOf(part));
    }
    mains
        .chassis()
        .forEach(
            net ->
                line(
                    out,
                    "LIVE CHASSIS: mains reaches %s; clip no earthed lead to it.",
                    map.nameOf(Subject.of(net))));
    mains
        .assumed()
        .forEach(
            part ->
                line(
                    out,
                    "%s is taken to join all its pins, for too little is known of it.",
                    map.nameOf(part)));
    mains
        .contradictions()
        .forEach(
            found ->
                line(
                    out,
                    "%s on %s %s; it is taken as mains.",
                    map.nameOf(Subject.of(found.pin())),
                    map.nameOf(Subject.of(found.net())),
                    found.message()));
  }

  private static String passing(OptionalDouble amps) {
    return amps.isEmpty()
        ? " and its value isn't known"
        : " and passes up to " + amount(amps.getAsDouble(), Quantity.CURRENT);
  }

  private void unmarked(PrintWriter out) {
    for (UnmarkedHazard danger : hazards.unmarked()) {
      line(
          out,
          "UNMARKED: %s on %s at %.0f,%.0f lies in no %s zone.",
          danger.text(map.nameOf(danger.subject())),
          danger.picture(),
          danger.at().x(),
          danger.at().y(),
          danger.kind().word());
    }
    if (!hazards.unplaced().isEmpty()) {
      line(out, "On no photo yet: %s", pins(hazards.unplaced()));
    }
  }

  private void charges(PrintWriter out) {
    if (hazards.charges().isEmpty()) {
      line(out, "No capacitors are known.");
      return;
    }
    line(out, "Stored charge; measure before touching, whatever stands here:");
    hazards.charges().forEach(charge -> charge(out, charge));
  }

  private void charge(PrintWriter out, StoredCharge charge) {
    DischargeText text = new DischargeText(charge, hazards.limits());
    line(
        out,
        "  %s between %s: %s",
        parts(charge.capacitors()),
        charge.ends().stream()
            .map(end -> HazardsCommand.nameOf(map, end))
            .collect(Collectors.joining(" and ")),
        text.amount());
    if (!charge.unread().isEmpty() && charge.discharge().isPresent()) {
      line(out, "    not counted, for the value isn't known: %s", parts(charge.unread()));
    }
    line(
        out,
        "    %s%s",
        charge.bleeder().map(this::through).orElse(""),
        text.fading() + (charge.bleeder().isEmpty() ? "" : "; measure before touching"));
    if (text.asksForMeans()) {
      line(out, "    %s", text.means());
    }
  }

  private String through(StoredCharge.Bleeder bleeder) {
    return "through %s (%s): "
        .formatted(parts(bleeder.resistors()), amount(bleeder.ohms(), Quantity.RESISTANCE));
  }

  private static String amount(double value, Quantity quantity) {
    return new Amount(quantity, value).text(FIGURES);
  }

  private String pins(List<PinRef> pins) {
    return pins.stream().map(pin -> map.nameOf(Subject.of(pin))).collect(Collectors.joining(" "));
  }

  private String parts(List<PartId> parts) {
    return parts.stream().map(map::nameOf).collect(Collectors.joining(", "));
  }

  private static void line(PrintWriter out, String format, Object... arguments) {
    WrappedText.print(
        out, NameRules.spelledOut(String.format(Locale.ROOT, format, arguments)), WIDTH);
  }
}
