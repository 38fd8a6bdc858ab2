package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.relegend.circuit.Node;
import org.relegend.hazard.Across;
import org.relegend.hazard.Battery;
import org.relegend.hazard.HazardousNode;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.MainsSign;
import org.relegend.hazard.NodeHazard;
import org.relegend.map.BoardMap;
import org.relegend.map.NameRules;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/** What is suspected and not known, for people to read; nodes of one reason stand in one line. */
record SuspectText(BoardMap map, Hazards hazards) {
  private static final int WIDTH = 100;

  void print(PrintWriter out) {
    hazards.signs().forEach(sign -> sign(out, sign));
    unknown(out);
    hazards.across().forEach(pair -> across(out, pair));
    faults(out);
    hazards.batteries().forEach(battery -> battery(out, battery));
  }

  private void sign(PrintWriter out, MainsSign sign) {
    line(
        out,
        "LOOKS LIKE MAINS: %s %s, but nothing in the map says that mains comes in there.",
        map.nameOf(sign.subject()),
        sign.sign());
  }

  private void unknown(PrintWriter out) {
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (NodeHazard hazard : hazards.unknown()) {
      if (hazard.node() instanceof Node.OfNet net && hazards.noVolts().contains(net.net())) {
        continue; // listed already
      }
      byReason
          .computeIfAbsent(hazard.reason(), reason -> new ArrayList<>())
          .add(HazardsCommand.nameOf(map, hazard.node()));
    }
    byReason.forEach(
        (reason, names) ->
            line(
                out,
                "UNKNOWN, TAKE AS HIGH: %s (%s). Type the voltage once it is measured.",
                String.join(", ", names),
                reason));
  }

  private void across(PrintWriter out, Across pair) {
    line(
        out,
        "Between %s and %s there are %s.",
        HazardsCommand.nameOf(map, pair.positive()),
        HazardsCommand.nameOf(map, pair.negative()),
        volts(pair.volts()));
  }

  /** One line for each source and amount: what lies behind is alike. */
  private void faults(PrintWriter out) {
    Map<String, List<String>> bySource = new LinkedHashMap<>();
    for (HazardousNode fault : hazards.faults()) {
      String from =
          "%s from %s"
              .formatted(
                  volts(Math.abs(fault.volts())), HazardsCommand.nameOf(map, fault.source()));
      String through = fault.through().stream().map(map::nameOf).collect(Collectors.joining(", "));
      bySource
          .computeIfAbsent(from, key -> new ArrayList<>())
          .add(HazardsCommand.nameOf(map, fault.node()) + " by " + through);
    }
    bySource.forEach(
        (from, names) ->
            line(out, "May carry %s if a part fails: %s.", from, String.join(", ", names)));
  }

  private void battery(PrintWriter out, Battery battery) {
    String made = battery.chemistry().isEmpty() ? "" : " (" + battery.chemistry() + ")";
    line(out, "%s%s %s", map.nameOf(battery.part()), made, battery.caution());
  }

  private static String volts(double volts) {
    return new Amount(Quantity.VOLTAGE, volts).text(3);
  }

  private static void line(PrintWriter out, String format, Object... arguments) {
    WrappedText.print(
        out, NameRules.spelledOut(String.format(Locale.ROOT, format, arguments)), WIDTH);
  }
}
