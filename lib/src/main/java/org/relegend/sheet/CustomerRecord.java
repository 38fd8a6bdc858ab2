package org.relegend.sheet;

import java.util.List;
import java.util.Optional;
import org.relegend.bench.CheckMark;
import org.relegend.bench.CheckStep;
import org.relegend.bench.Condition;
import org.relegend.bench.IntakeRecord;
import org.relegend.bench.LogEntry;
import org.relegend.bench.rule.NodeVerdict;
import org.relegend.hazard.Caution;
import org.relegend.hazard.Cautions;
import org.relegend.map.MapInfo;
import org.relegend.map.NetId;
import org.relegend.map.PartId;

/** What the owner gets: what was done, measured and adjusted, and what to watch. */
final class CustomerRecord {
  private final PageFlow flow;
  private final JobFacts facts;

  CustomerRecord(PageFlow flow, JobFacts facts) {
    this.flow = flow;
    this.facts = facts;
  }

  void draw(CloseUps closeUps) {
    MapInfo info = facts.map().info();
    IntakeRecord intake = facts.job().intake();
    flow.heading("Repair record", 20);
    fact("Instrument", (info.maker() + " " + info.model()).strip());
    fact("Serial number", intake.serial());
    fact("For", intake.customer());
    if (!intake.equals(IntakeRecord.EMPTY)) {
      fact("Taken in", facts.day(intake.at()));
    }
    fact("Days and times", facts.clock());
    fact("With it came", intake.accessories());
    flow.down(4);
    section("What you told us", intake.complaint());
    done();
    worked();
    closeUps.draw(flow, "Photos of these parts", facts.repaired());
    foundSo();
    readings();
    list("Adjusted", LogEntry.Kind.ADJUSTMENT);
    checks();
    list("What to watch", LogEntry.Kind.WATCH);
    caution();
    SignOff.draw(flow);
  }

  private void fact(String what, String text) {
    if (!text.isEmpty()) {
      flow.indented(what + ": " + text, 0, PageFlow.BODY + 1, false);
    }
  }

  private void section(String title, String text) {
    if (!text.isEmpty()) {
      flow.heading(title, 12);
      flow.paragraph(text);
      flow.down(4);
    }
  }

  private void list(String title, LogEntry.Kind kind) {
    List<LogEntry> entries = facts.log(kind);
    if (entries.isEmpty()) {
      return;
    }
    flow.heading(title, 12);
    entries.forEach(entry -> flow.paragraph("• " + entry.text()));
    flow.down(4);
  }

  private void done() {
    if (facts.log(LogEntry.Kind.REPAIR).isEmpty()) {
      section("What was done", "Nothing was repaired so far.");
    }
    list("What was done", LogEntry.Kind.REPAIR);
  }

  private void worked() {
    if (facts.repaired().isEmpty()) {
      return;
    }
    flow.heading("Parts worked on", 12);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("Part", 40),
                new RuledTable.Column("What", 25),
                new RuledTable.Column("Fitted now", 25)));
    for (PartId part : facts.repaired()) {
      Optional<Condition> condition = facts.job().condition(part);
      table.row(
          facts.described(part),
          condition.map(Condition::text).orElse("see above"),
          condition.map(Condition::fitted).orElse(""));
    }
    flow.down(8);
  }

  private void foundSo() {
    List<Condition> found = facts.foundSo();
    if (found.isEmpty()) {
      return;
    }
    flow.heading("Found when it came in, from earlier work or age", 12);
    found.forEach(
        condition ->
            flow.paragraph(
                "• %s: %s".formatted(facts.described(condition.part()), condition.text())));
    flow.down(4);
  }

  private void readings() {
    List<JobFacts.Compared> nodes =
        facts.compared().stream()
            .filter(node -> node.before().isPresent() && node.after().isPresent())
            .toList();
    if (nodes.isEmpty()) {
      return;
    }
    flow.heading("Measured before and after", 12);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("Point", 22),
                new RuledTable.Column("As it came", 18),
                new RuledTable.Column("After the repair", 18),
                new RuledTable.Column("Same point, other channel", 22),
                new RuledTable.Column("", 26)));
    for (JobFacts.Compared node : nodes) {
      table.row(
          facts.unit().name(node.net()),
          JobFacts.value(node.before()),
          JobFacts.value(node.after()),
          JobFacts.volts(node.twin()),
          found(node.net()));
    }
    flow.down(8);
  }

  private String found(NetId net) {
    if (facts.unit().verdict(net) != NodeVerdict.GOOD) {
      return facts.verdict(net);
    }
    boolean byTwin = facts.unit().healthy(net).equals(facts.unit().twin(net));
    return byTwin ? "as it should be" : "as the drawing has it";
  }

  private void checks() {
    Optional<CheckMark> leakage = facts.job().mark(CheckStep.LEAKAGE);
    section(
        "Insulation and protective earth",
        leakage
            .map(mark -> "Measured on %s. %s".formatted(facts.day(mark.at()), mark.note()))
            .orElse(JobFacts.NOT_MEASURED));
  }

  private void caution() {
    List<Caution> lines = List.of(Cautions.of("who"), Cautions.of("unplug"));
    flow.framed(
        lines.stream().map(Caution::title).toList(),
        lines.stream().map(Caution::text).toList(),
        8,
        1.5,
        0);
    flow.paragraph(
        "This record tells what was done and what was measured. It is no certificate of any test"
            + " that isn't named in it.",
        8,
        false);
  }
}
