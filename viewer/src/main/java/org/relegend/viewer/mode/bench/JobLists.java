package org.relegend.viewer.mode.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JOptionPane;
import org.relegend.bench.Condition;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.rule.Unit;
import org.relegend.bench.rule.Verdict;
import org.relegend.bench.rule.Volts;
import org.relegend.bench.suspect.Suspect;
import org.relegend.bench.suspect.Suspects;
import org.relegend.map.NetId;
import org.relegend.map.Subject;
import org.relegend.viewer.control.RowList;
import org.relegend.viewer.control.Texts;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.Jobs;
import org.relegend.viewer.work.LatestJob;

/** The lists of the job: differences, conditions, hypotheses; each row leads to its place. */
public final class JobLists {
  public static final String DIFFERENCES = "differences";
  public static final String CONDITIONS = "conditions";
  public static final String HYPOTHESES = "hypotheses";
  public static final String SUSPECTS = "suspects";
  private static final String AREA = "-area";

  /** Suspects that are listed; beyond them shares are small. */
  private static final int MOST = 20;

  private final Session session;
  private final RowList differences;
  private final RowList conditions;
  private final RowList hypotheses;
  private final RowList suspects;
  private final LatestJob latest;

  /**
   * @param back shows the node strip again
   */
  public JobLists(Session session, Jobs jobs, Runnable back) {
    this.session = session;
    latest = new LatestJob(jobs);
    suspects = new RowList(SUSPECTS, back);
    differences = new RowList(DIFFERENCES, back);
    conditions = new RowList(CONDITIONS, back);
    hypotheses = new RowList(HYPOTHESES, back);
    hypotheses.onKey("D", row -> settle(Hypothesis.Result.DISPROVED));
    hypotheses.onKey("F", row -> settle(Hypothesis.Result.FOUND));
    hypotheses.onKey("C", row -> settle(Hypothesis.Result.CAUSE));
  }

  public List<RowList> all() {
    return List.of(differences, conditions, hypotheses, suspects);
  }

  public RowList list(String name) {
    return named(name).orElseThrow(() -> new IllegalArgumentException("no list " + name));
  }

  public Optional<RowList> named(String name) {
    return all().stream().filter(list -> (name + AREA).equals(list.getName())).findFirst();
  }

  /** The name of the list that shows; empty where none does. */
  public String shown() {
    return all().stream()
        .filter(RowList::isVisible)
        .map(list -> list.getName().replace(AREA, ""))
        .findFirst()
        .orElse("");
  }

  /** Takes up the job as it is now. */
  public void settle() {
    showDifferences();
    showConditions();
    showHypotheses();
    weigh();
  }

  /** Weighs all parts anew, off the event thread; what comes late is dropped. */
  private void weigh() {
    latest.cancel();
    Optional<Unit> unit = session.room(BenchWork.class).unit();
    if (unit.isEmpty()) {
      return;
    }
    suspects.show(Texts.of("list.suspects.weighing"), "", List.of());
    latest.run(
        SUSPECTS,
        watch -> Suspects.of(unit.get()),
        this::show,
        problem -> suspects.show(Texts.of("error.unexpected", problem.toString()), "", List.of()));
  }

  private void show(Suspects found) {
    List<RowList.Row> rows = new ArrayList<>();
    found
        .next()
        .ifPresent(
            next ->
                rows.add(
                    new RowList.Row(
                        Texts.of("list.suspects.next"),
                        next.where(),
                        next.why(),
                        () -> go(next.at()))));
    for (Suspect suspect : found.suspects().stream().limit(MOST).toList()) {
      rows.add(
          new RowList.Row(
              suspect.score() < 0.01
                  ? Texts.of("list.suspects.less")
                  : Texts.of("list.suspects.share", suspect.score()),
              session.map().nameOf(suspect.part()),
              String.join("; ", suspect.reasons()),
              () -> go(Subject.of(suspect.part()))));
    }
    suspects.show(Texts.of("list.suspects.count"), Texts.of("list.suspects.hint"), rows);
  }

  private void go(Subject subject) {
    session.choose(subject);
  }

  private void showDifferences() {
    List<RowList.Row> rows = new ArrayList<>();
    session
        .room(BenchWork.class)
        .unit()
        .ifPresent(unit -> bySize(unit).forEach(net -> rows.add(row(unit, net))));
    differences.show(
        Texts.of("list.differences.count", rows.size()), Texts.of("list.differences.hint"), rows);
  }

  /** Nodes that differ from what they should be, by how many times the limit. */
  private static List<NetId> bySize(Unit unit) {
    return unit.netsRead().stream()
        .filter(net -> unit.verdict(net) == Verdict.BAD)
        .sorted(
            Comparator.comparingDouble(
                net -> -Math.abs(unit.difference(net).orElse(0)) / unit.limit(net)))
        .toList();
  }

  private RowList.Row row(Unit unit, NetId net) {
    String twin =
        unit.twins()
            .net(net)
            .map(
                other ->
                    Texts.of(
                        "reading.twin",
                        unit.name(other),
                        unit.twin(net).map(Volts::text).orElse(Texts.of("reading.none"))))
            .orElse(Texts.of("list.differences.drawn"));
    return new RowList.Row(
        Volts.text(unit.difference(net).orElse(0)),
        unit.name(net) + "  " + unit.reading(net).map(r -> r.amount().text(4)).orElse(""),
        twin + "  \u00b7  " + Texts.of("list.differences.limit", Volts.text(unit.limit(net))),
        () -> go(Subject.of(net)));
  }

  private void showConditions() {
    List<RowList.Row> rows = new ArrayList<>();
    for (Condition condition : session.room(Conditions.class).notOriginal()) {
      String more =
          List.of(condition.fitted(), condition.dateCode(), condition.note()).stream()
              .filter(text -> !text.isEmpty())
              .collect(Collectors.joining("  \u00b7  "));
      rows.add(
          new RowList.Row(
              session.map().nameOf(condition.part()),
              condition.text(),
              more,
              () -> go(Subject.of(condition.part()))));
    }
    conditions.show(
        Texts.of("list.conditions.count", rows.size()), Texts.of("list.conditions.hint"), rows);
  }

  private List<Hypothesis> supposed() {
    return session
        .room(BenchWork.class)
        .job()
        .map(job -> List.copyOf(job.hypotheses()))
        .orElse(List.of());
  }

  private void showHypotheses() {
    List<RowList.Row> rows = new ArrayList<>();
    for (Hypothesis hypothesis : supposed()) {
      String parts =
          hypothesis.parts().stream().map(session.map()::nameOf).collect(Collectors.joining(", "));
      String more =
          List.of(hypothesis.why(), hypothesis.test(), hypothesis.outcome()).stream()
              .filter(text -> !text.isEmpty())
              .collect(Collectors.joining("  \u00b7  "));
      rows.add(
          new RowList.Row(
              Texts.of("result." + hypothesis.result().word()),
              (parts + "  " + hypothesis.what()).strip(),
              more,
              () ->
                  hypothesis.parts().stream().findFirst().ifPresent(part -> go(Subject.of(part)))));
    }
    hypotheses.show(
        Texts.of("list.hypotheses.count", rows.size()), Texts.of("list.hypotheses.hint"), rows);
  }

  private void settle(Hypothesis.Result result) {
    List<Hypothesis> all = supposed();
    int chosen = hypotheses.chosen();
    if (chosen < 0 || chosen >= all.size()) {
      return;
    }
    String outcome =
        JOptionPane.showInputDialog(
            hypotheses,
            Texts.of("result.ask"),
            Texts.of("result." + result.word()),
            JOptionPane.PLAIN_MESSAGE);
    if (outcome != null) {
      session.room(BenchNotes.class).settle(all.get(chosen).id(), result, outcome.strip());
    }
  }
}
