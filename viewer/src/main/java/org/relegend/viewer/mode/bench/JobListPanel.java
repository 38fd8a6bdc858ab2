package org.relegend.viewer.mode.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JOptionPane;
import org.relegend.bench.Condition;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.NodeVerdict;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.bench.suspect.Suspect;
import org.relegend.bench.suspect.Suspects;
import org.relegend.map.NetId;
import org.relegend.map.Subject;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.RowListPanel;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.LatestJob;
import org.relegend.viewer.work.TaskRunner;

/** The lists of the job: differences, conditions, hypotheses; each row leads to its place. */
public final class JobListPanel {
  public static final String DIFFERENCES = "differences";
  public static final String CONDITIONS = "conditions";
  public static final String HYPOTHESES = "hypotheses";
  public static final String SUSPECTS = "suspects";
  private static final String AREA = "-area";

  /** Suspects that are listed; beyond them shares are small. */
  private static final int MOST = 20;

  private final Session session;
  private final RowListPanel differences;
  private final RowListPanel conditions;
  private final RowListPanel hypotheses;
  private final RowListPanel suspects;
  private final LatestJob latest;

  /**
   * @param back shows the node strip again
   */
  public JobListPanel(Session session, TaskRunner jobs, Runnable back) {
    this.session = session;
    latest = new LatestJob(jobs);
    suspects = new RowListPanel(SUSPECTS, back);
    differences = new RowListPanel(DIFFERENCES, back);
    conditions = new RowListPanel(CONDITIONS, back);
    hypotheses = new RowListPanel(HYPOTHESES, back);
    hypotheses.onKey("D", row -> conclude(Hypothesis.Result.DISPROVED));
    hypotheses.onKey("F", row -> conclude(Hypothesis.Result.FOUND));
    hypotheses.onKey("C", row -> conclude(Hypothesis.Result.CAUSE));
  }

  public List<RowListPanel> all() {
    return List.of(differences, conditions, hypotheses, suspects);
  }

  public RowListPanel list(String name) {
    return named(name).orElseThrow(() -> new IllegalArgumentException("no list " + name));
  }

  public Optional<RowListPanel> named(String name) {
    return all().stream().filter(list -> (name + AREA).equals(list.getName())).findFirst();
  }

  /** The name of the list that shows; empty where none does. */
  public String shown() {
    return all().stream()
        .filter(RowListPanel::isVisible)
        .map(list -> list.getName().replace(AREA, ""))
        .findFirst()
        .orElse("");
  }

  /** Takes up the job as it is now. */
  public void refresh() {
    showDifferences();
    showConditions();
    showHypotheses();
    weigh();
  }

  /** Weighs all parts anew, off the event thread; what comes late is dropped. */
  private void weigh() {
    latest.cancel();
    Optional<UnitReadings> unit = session.room(OpenJob.class).unit();
    if (unit.isEmpty()) {
      return;
    }
    suspects.show(Messages.of("list.suspects.weighing"), "", List.of());
    latest.run(
        SUSPECTS,
        watch -> Suspects.of(unit.get()),
        this::show,
        problem ->
            suspects.show(Messages.of("error.unexpected", problem.toString()), "", List.of()));
  }

  private void show(Suspects found) {
    List<RowListPanel.Row> rows = new ArrayList<>();
    found
        .next()
        .ifPresent(
            next ->
                rows.add(
                    new RowListPanel.Row(
                        Messages.of("list.suspects.next"),
                        next.where(),
                        next.why(),
                        () -> go(next.at()))));
    for (Suspect suspect : found.suspects().stream().limit(MOST).toList()) {
      rows.add(
          new RowListPanel.Row(
              suspect.score() < 0.01
                  ? Messages.of("list.suspects.less")
                  : Messages.of("list.suspects.share", suspect.score()),
              session.map().nameOf(suspect.part()),
              String.join("; ", suspect.reasons()),
              () -> go(Subject.of(suspect.part()))));
    }
    suspects.show(Messages.of("list.suspects.count"), Messages.of("list.suspects.hint"), rows);
  }

  private void go(Subject subject) {
    session.choose(subject);
  }

  private void showDifferences() {
    List<RowListPanel.Row> rows = new ArrayList<>();
    session
        .room(OpenJob.class)
        .unit()
        .ifPresent(unit -> bySize(unit).forEach(net -> rows.add(row(unit, net))));
    differences.show(
        Messages.of("list.differences.count", rows.size()),
        Messages.of("list.differences.hint"),
        rows);
  }

  /** Nodes that differ from what they should be, by how many times the limit. */
  private static List<NetId> bySize(UnitReadings unit) {
    return unit.netsRead().stream()
        .filter(net -> unit.verdict(net) == NodeVerdict.BAD)
        .sorted(
            Comparator.comparingDouble(
                net -> -Math.abs(unit.difference(net).orElse(0)) / unit.limit(net)))
        .toList();
  }

  private RowListPanel.Row row(UnitReadings unit, NetId net) {
    String twin =
        unit.twins()
            .net(net)
            .map(
                other ->
                    Messages.of(
                        "reading.twin",
                        unit.name(other),
                        unit.twin(net).map(NetVoltage::text).orElse(Messages.of("reading.none"))))
            .orElse(Messages.of("list.differences.drawn"));
    return new RowListPanel.Row(
        NetVoltage.text(unit.difference(net).orElse(0)),
        unit.name(net) + "  " + unit.reading(net).map(r -> r.amount().text(4)).orElse(""),
        twin
            + "  \u00b7  "
            + Messages.of("list.differences.limit", NetVoltage.text(unit.limit(net))),
        () -> go(Subject.of(net)));
  }

  private void showConditions() {
    List<RowListPanel.Row> rows = new ArrayList<>();
    for (Condition condition : session.room(ConditionEditor.class).notOriginal()) {
      String more =
          List.of(condition.fitted(), condition.dateCode(), condition.note()).stream()
              .filter(text -> !text.isEmpty())
              .collect(Collectors.joining("  \u00b7  "));
      rows.add(
          new RowListPanel.Row(
              session.map().nameOf(condition.part()),
              condition.text(),
              more,
              () -> go(Subject.of(condition.part()))));
    }
    conditions.show(
        Messages.of("list.conditions.count", rows.size()),
        Messages.of("list.conditions.hint"),
        rows);
  }

  private List<Hypothesis> supposed() {
    return session
        .room(OpenJob.class)
        .job()
        .map(job -> List.copyOf(job.hypotheses()))
        .orElse(List.of());
  }

  private void showHypotheses() {
    List<RowListPanel.Row> rows = new ArrayList<>();
    for (Hypothesis hypothesis : supposed()) {
      String parts =
          hypothesis.parts().stream().map(session.map()::nameOf).collect(Collectors.joining(", "));
      String more =
          List.of(hypothesis.why(), hypothesis.test(), hypothesis.outcome()).stream()
              .filter(text -> !text.isEmpty())
              .collect(Collectors.joining("  \u00b7  "));
      rows.add(
          new RowListPanel.Row(
              Messages.of("result." + hypothesis.result().word()),
              (parts + "  " + hypothesis.what()).strip(),
              more,
              () ->
                  hypothesis.parts().stream().findFirst().ifPresent(part -> go(Subject.of(part)))));
    }
    hypotheses.show(
        Messages.of("list.hypotheses.count", rows.size()),
        Messages.of("list.hypotheses.hint"),
        rows);
  }

  private void conclude(Hypothesis.Result result) {
    List<Hypothesis> all = supposed();
    int chosen = hypotheses.chosen();
    if (chosen < 0 || chosen >= all.size()) {
      return;
    }
    String outcome =
        JOptionPane.showInputDialog(
            hypotheses,
            Messages.of("result.ask"),
            Messages.of("result." + result.word()),
            JOptionPane.PLAIN_MESSAGE);
    if (outcome != null) {
      session.room(BenchNotes.class).refresh(all.get(chosen).id(), result, outcome.strip());
    }
  }
}
