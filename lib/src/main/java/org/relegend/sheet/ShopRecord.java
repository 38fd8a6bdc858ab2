package org.relegend.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.relegend.bench.CheckStep;
import org.relegend.bench.Condition;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.IntakeRecord;
import org.relegend.bench.LogEntry;
import org.relegend.bench.Reading;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.RuleFinding;
import org.relegend.bench.suspect.Suspect;
import org.relegend.bench.suspect.Suspects;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.VoltageLimits;
import org.relegend.map.BoardMap;
import org.relegend.map.MapIndex;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/** What the shop keeps: everything that was seen, measured, thought and done. */
final class ShopRecord {
  /** How many suspects are printed. */
  private static final int SUSPECTS = 6;

  private final PageFlow flow;
  private final JobFacts facts;
  private final String digest;

  ShopRecord(PageFlow flow, JobFacts facts, String digest) {
    this.flow = flow;
    this.facts = facts;
    this.digest = digest;
  }

  void draw(BoardMap shown, CutOuts cutOuts, CloseUps closeUps, Instant printed) {
    flow.heading("Job " + facts.job().id(), 20);
    Hazards hazards = Hazards.of(facts.circuit(), VoltageLimits.INSTRUMENTS);
    MapSheets.cautions(flow, hazards.knowsMains());
    fact("Days and times", facts.clock());
    intake();
    origin(printed);
    checklist();
    if (facts.job().mark(CheckStep.LEAKAGE).isEmpty()) {
      flow.paragraph(JobFacts.NOT_MEASURED);
    }
    conditions();
    photos(shown, cutOuts);
    closeUps.draw(
        flow,
        "Close-ups of this unit",
        facts.map().parts().stream().map(part -> part.id()).toList());
    compared();
    readings();
    concluded();
    hypotheses();
    log();
    SignOff.draw(flow);
  }

  private void intake() {
    IntakeRecord intake = facts.job().intake();
    if (intake.equals(IntakeRecord.EMPTY)) {
      return;
    }
    flow.heading("Intake", 12);
    fact("Customer", intake.customer());
    fact("Serial number", intake.serial());
    fact("Complaint, in the owner's words", intake.complaint());
    fact("Accessories", intake.accessories());
    fact("History", intake.history());
    fact(
        "Taken in",
        facts.day(intake.at())
            + (intake.receivedBy().isEmpty() ? "" : " by " + intake.receivedBy()));
    flow.down(6);
  }

  private void fact(String what, String text) {
    if (!text.isEmpty()) {
      flow.indented(what + ": " + text, 0, PageFlow.BODY, false);
    }
  }

  private void origin(Instant printed) {
    flow.heading("Map", 12);
    Provenance.of(facts.map(), digest, printed)
        .forEach(line -> flow.indented(line, 0, PageFlow.BODY, false));
    if (!facts.job().map().digest().equals(digest)) {
      flow.paragraph(
          "The map was changed since the job was tied to it (digest then: "
              + facts.job().map().digest()
              + ").");
    }
    flow.down(6);
  }

  private void checklist() {
    flow.heading("Checklist", 12);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("Step", 50),
                new RuledTable.Column("Done", 18),
                new RuledTable.Column("Note", 32)));
    for (CheckStep step : CheckStep.values()) {
      table.row(
          step.text(),
          facts
              .job()
              .mark(step)
              .map(mark -> (facts.minute(mark.at()) + " " + mark.author()).strip())
              .orElse("open"),
          facts.job().mark(step).map(mark -> mark.note()).orElse(""));
    }
    flow.down(8);
  }

  private void conditions() {
    if (facts.job().conditions().isEmpty()) {
      return;
    }
    flow.heading("Conditions", 12);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("Part", 34),
                new RuledTable.Column("Condition", 22),
                new RuledTable.Column("Fitted", 14),
                new RuledTable.Column("Date code", 10),
                new RuledTable.Column("Note", 30)));
    for (Condition condition : facts.job().conditions()) {
      table.row(
          facts.described(condition.part()),
          condition.text(),
          condition.fitted(),
          condition.dateCode(),
          condition.note());
    }
    flow.down(8);
  }

  /** Photos with every part that has a condition, named with it. */
  private void photos(BoardMap shown, CutOuts cutOuts) {
    Map<Picture, List<PrintedMark>> marks = new LinkedHashMap<>();
    MapIndex index = new MapIndex(shown);
    shown.pictures().stream()
        .filter(picture -> picture instanceof Photo)
        .forEach(photo -> marks.put(photo, new ArrayList<>()));
    for (Condition condition : facts.job().conditions()) {
      Subject part = Subject.of(condition.part());
      for (Placement place : index.placementsOf(part)) {
        shown
            .picture(place.picture())
            .map(marks::get)
            .ifPresent(
                list ->
                    list.add(
                        PrintedMark.of(facts.map().nameOf(part) + " " + condition.text(), place)));
      }
    }
    marks.forEach(
        (photo, list) -> {
          if (!list.isEmpty()) {
            cutOuts.large(flow, new CutOuts.View(photo, list));
          }
        });
  }

  private void compared() {
    List<JobFacts.Compared> nodes = facts.compared();
    if (nodes.isEmpty()) {
      return;
    }
    flow.heading("Nodes against twin or map, largest difference first", 12);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("Node", 18),
                new RuledTable.Column("As it came", 14),
                new RuledTable.Column("After repair", 14),
                new RuledTable.Column("Twin now", 13),
                new RuledTable.Column("Difference", 13),
                new RuledTable.Column("from", 19),
                new RuledTable.Column("Limit", 11),
                new RuledTable.Column("", 18)));
    for (JobFacts.Compared node : nodes) {
      table.row(
          facts.unit().name(node.net()),
          JobFacts.value(node.before()),
          JobFacts.value(node.after()),
          JobFacts.volts(node.twin()),
          JobFacts.volts(node.difference()),
          facts.comparedWith(node.net()),
          NetVoltage.text(facts.unit().limit(node.net())),
          facts.verdict(node.net()));
    }
    table.remark(
        "A node is compared with its twin. Where the twin itself isn't as the map says, it is"
            + " compared with the map.");
    flow.down(8);
  }

  private void readings() {
    if (facts.job().readings().isEmpty()) {
      return;
    }
    flow.heading("All readings", 12);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("No.", 6),
                new RuledTable.Column("When", 20),
                new RuledTable.Column("At", 16),
                new RuledTable.Column("Value", 14),
                new RuledTable.Column("How", 34),
                new RuledTable.Column("By", 10)));
    for (Reading reading : facts.job().readings()) {
      table.row(
          reading.id().toString(),
          facts.minute(reading.taken()),
          facts.map().nameOf(reading.at()),
          JobFacts.text(reading.amount()),
          facts.setting(reading),
          reading.author());
    }
    flow.down(8);
  }

  /**
   * What the program makes of it all: for the shop alone. Once something was repaired the readings
   * are of a unit that isn't the one that came in, and nothing is suspected any more.
   */
  private void concluded() {
    if (facts.unit().netsRead().isEmpty()) {
      return;
    }
    Suspects found = Suspects.of(facts.unit());
    flow.heading("What the readings say now, by rules that can be wrong", 12);
    for (RuleFinding finding : found.findings()) {
      flow.paragraph("%s: %s".formatted(finding.severity().word(), finding.message()));
    }
    if (found.findings().isEmpty()) {
      flow.paragraph("No rule finds anything.");
    }
    flow.down(4);
    if (!facts.log(LogEntry.Kind.REPAIR).isEmpty()) {
      return;
    }
    flow.heading("Suspects, by a simple model", 12);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("Part", 12),
                new RuledTable.Column("Share", 8),
                new RuledTable.Column("Reasons", 80)));
    for (Suspect suspect : found.suspects().stream().limit(SUSPECTS).toList()) {
      table.row(
          facts.map().nameOf(suspect.part()),
          suspect.score() < 0.01
              ? "< 1 %"
              : String.format(Locale.ROOT, "%.0f %%", 100 * suspect.score()),
          String.join("; ", suspect.reasons()));
    }
    flow.down(8);
  }

  private void hypotheses() {
    if (facts.job().hypotheses().isEmpty()) {
      return;
    }
    flow.heading("Hypotheses, the disproved ones too", 12);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("No.", 6),
                new RuledTable.Column("Parts", 14),
                new RuledTable.Column("What and why", 34),
                new RuledTable.Column("Test", 22),
                new RuledTable.Column("Result", 12),
                new RuledTable.Column("Outcome", 24)));
    for (Hypothesis hypothesis : facts.job().hypotheses()) {
      table.row(
          hypothesis.id().toString(),
          String.join(", ", hypothesis.parts().stream().map(facts.map()::nameOf).toList()),
          sentence(hypothesis.what(), hypothesis.why()),
          hypothesis.test(),
          hypothesis.result().word(),
          hypothesis.outcome());
    }
    flow.down(8);
  }

  private static String sentence(String what, String why) {
    return why.isEmpty() ? what : what + " - " + why;
  }

  private void log() {
    if (facts.job().log().isEmpty()) {
      return;
    }
    flow.heading("Log", 12);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("When", 20),
                new RuledTable.Column("Kind", 13),
                new RuledTable.Column("About", 20),
                new RuledTable.Column("What", 40),
                new RuledTable.Column("By", 10)));
    for (LogEntry entry : facts.job().log()) {
      table.row(
          facts.minute(entry.at()),
          entry.kind().word(),
          facts.names(entry.about()),
          entry.text(),
          entry.author());
    }
    flow.down(8);
  }
}
