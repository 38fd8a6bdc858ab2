package org.relegend.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.relegend.circuit.JoinedPin;
import org.relegend.hazard.Caution;
import org.relegend.hazard.Cautions;
import org.relegend.map.HazardZone;
import org.relegend.map.Net;

/** The sheet of one node: its pictures with numbers, and a table with empty boxes for readings. */
final class NodeSheet {
  /** How a measurement is planned where touching can hurt; what the cautions say, to be ticked. */
  static final String PLANNED =
      "I have planned this: power off, clip on, power on, hands away; somebody is near.";

  private static final double SIGN = 24;

  private final PageFlow flow;
  private final NodeFacts facts;

  NodeSheet(PageFlow flow, NodeFacts facts) {
    this.flow = flow;
    this.facts = facts;
  }

  void draw(CutOuts cutOuts) {
    flow.heading(facts.net().name(), 17);
    if (!facts.summary().isEmpty()) {
      flow.paragraph(facts.summary());
    }
    facts
        .unknown()
        .ifPresent(
            reason ->
                flow.paragraph(
                    "What it carries is not known; take it as high until it is measured: %s."
                        .formatted(reason),
                    PageFlow.BODY,
                    true));
    cautions(facts.dangers());
    conditions();
    List<CutOuts.View> views = facts.views();
    if (views.isEmpty()) {
      flow.paragraph("No pin of this node is placed on a picture yet.");
    }
    cutOuts.draw(flow, views, RuledTable.heightToFill(facts.joined().pins().size()));
    table();
    facts.differences().forEach(flow::paragraph);
    facts
        .joined()
        .undecided()
        .forEach(
            part ->
                flow.paragraph(
                    "%s may join more, by how it stands: %s."
                        .formatted(
                            facts.circuit().map().nameOf(part.part()),
                            String.join(", ", part.positions()))));
  }

  /** What threatens here stands before the place itself. */
  private void cautions(Set<HazardZone.Kind> kinds) {
    if (kinds.isEmpty()) {
      return;
    }
    List<Caution> cautions = kinds.stream().map(Cautions::of).toList();
    flow.framed(
        cautions.stream().map(Caution::title).toList(),
        cautions.stream().map(Caution::text).toList(),
        PageFlow.BODY,
        2,
        SIGN * 1.5);
    // the frame was kept on one page, so its foot tells where it is
    PrintedZones.triangle(
        flow.leaf(),
        kinds.iterator().next(),
        flow.press().right() - SIGN * 0.85,
        flow.y() - SIGN * 0.85,
        SIGN);
    tick(PLANNED);
  }

  private void tick(String text) {
    flow.leaf().box(flow.press().left(), flow.y() + 0.5, 9, 9, 0.8);
    flow.indented(text, 14, PageFlow.BODY, true);
    flow.down(4);
  }

  /** A reading tells nothing without these. */
  private void conditions() {
    List<String> asked =
        List.of("Measured against", "Meter, ohms", "Controls, signal, power", "Date, unit");
    double width = flow.press().width() / asked.size();
    flow.need(32);
    for (int i = 0; i < asked.size(); i++) {
      double x = flow.press().left() + i * width;
      flow.leaf().text(asked.get(i), x, flow.y() + 7.5, 7.5, false);
      flow.leaf().box(x, flow.y() + 10, width - 6, 17, 0.8);
    }
    flow.down(34);
  }

  private void table() {
    List<RuledTable.Column> columns = new ArrayList<>();
    columns.add(new RuledTable.Column("No.", 5));
    columns.add(new RuledTable.Column("Pin", 12));
    columns.add(new RuledTable.Column("Role", 13));
    columns.add(new RuledTable.Column("Value", 19));
    columns.add(new RuledTable.Column("Evidence", 11));
    columns.add(new RuledTable.Column("Twin", 12));
    boolean twin = facts.twin().isPresent();
    columns.add(new RuledTable.Column(volts(facts.net()), 14, true));
    if (twin) {
      columns.add(new RuledTable.Column(volts(facts.twin().orElseThrow()), 14, true));
    }
    RuledTable table = new RuledTable(flow, columns);
    int number = 1;
    for (JoinedPin pin : facts.joined().pins()) {
      List<String> cells =
          new ArrayList<>(
              List.of(
                  String.valueOf(number++),
                  facts.name(pin),
                  pin.role(),
                  pin.value(),
                  facts.evidence(pin),
                  facts.twins(pin),
                  ""));
      if (twin) {
        cells.add("");
      }
      table.row(cells.toArray(String[]::new));
    }
    flow.down(5);
  }

  private static String volts(Net net) {
    return net.channel().isEmpty()
        ? "Volts"
        : String.format(Locale.ROOT, "Volts, channel %s", net.channel());
  }
}
