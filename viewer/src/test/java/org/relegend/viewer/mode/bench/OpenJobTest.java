package org.relegend.viewer.mode.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.bench.EntryId;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.LogEntry;
import org.relegend.bench.MapLink;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.bench.rule.RuleFinding;
import org.relegend.bench.suspect.Suspects;
import org.relegend.map.HazardZone;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Quantity;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.PlacementCorrections;
import org.relegend.viewer.session.SessionBench;

class OpenJobTest {
  private final SessionBench bench = new SessionBench(SessionBench.placedChannels());
  private final List<Job> kept = new ArrayList<>();

  private OpenJob work() {
    return bench.session.room(OpenJob.class);
  }

  private void lay(boolean readOnly) {
    MapLink link = new MapLink("sample", "0".repeat(64), "Sample", "../map");
    work().lay(Job.empty("job", link), readOnly, kept::add);
  }

  private void withMeter() {
    lay(false);
    work()
        .setSetting(
            new MeasurementSetup(
                "", new Instrument("meter", 10e6, 0), MeasurementSetup.Power.ON, false, ""));
  }

  private Job job() {
    return work().job().orElseThrow();
  }

  private Reading last() {
    return job().readings().at(job().readings().size() - 1);
  }

  @ParameterizedTest
  @CsvSource({"-0.62, -0.62", "101m, 0.101", "13.85 V, 13.85", "-4.7mV, -0.0047", "2, 2"})
  void typedAtANode_isAVoltageThere(String typed, double volts) {
    withMeter();
    bench.session.choose(Subject.parse("net:A_ATT"));
    assertThat(work().type(typed)).isTrue();
    assertThat(last().at()).isEqualTo(Subject.parse("net:A_ATT"));
    assertThat(last().quantity()).isEqualTo(Quantity.VOLTAGE);
    assertThat(last().value()).isEqualTo(volts);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.READ);
    assertThat(kept.get(kept.size() - 1)).isEqualTo(job());
  }

  @Test
  void behindASemicolon_standsWhatHoldsForThisReading() {
    withMeter();
    bench.session.choose(Subject.parse("net:A_ATT"));
    assertThat(work().type("101m; limit 5 mV; against B_ATT; no signal")).isTrue();
    assertThat(last().value()).isEqualTo(0.101);
    assertThat(last().setting().against()).isEqualTo("B_ATT");
    assertThat(last().setting().words()).isEqualTo("no signal");
    assertThat(job().limit(Subject.parse("net:A_ATT")).volts()).isEqualTo(0.005);
    bench.session.undo();
    assertThat(job().readings()).isEmpty();
    assertThat(job().limits()).isEmpty();
    assertThat(work().type("1; against NOWHERE")).isFalse();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.REFUSED);
    assertThat(work().type("1")).isTrue();
    assertThat(last().setting()).isEqualTo(work().setting());
  }

  private List<HazardZone.Kind> watched() {
    return bench.session.document().watched().stream().map(HazardZone::kind).distinct().toList();
  }

  private boolean cardsWarn() {
    return bench.session.selection().strip().cards().stream()
        .anyMatch(card -> !card.zones().isEmpty());
  }

  /** The map tells of no voltage: what was read on this unit must hold the place back. */
  @Test
  void readAboveTheLimits_gateAndCardsKnowAtOnce_andNoMoreWhenItIsUndone() {
    withMeter();
    bench.session.choose(Subject.parse("net:B_ATT"));
    assertThat(bench.session.gate().caution()).isEmpty();
    assertThat(cardsWarn()).isFalse();
    assertThat(watched()).isEmpty();
    assertThat(work().type("430")).isTrue();
    assertThat(watched()).contains(HazardZone.Kind.HIGH_VOLTAGE);
    assertThat(cardsWarn()).isTrue();
    bench.session.selection().clear();
    bench.session.choose(Subject.parse("C202"));
    assertThat(bench.session.gate().caution().orElseThrow())
        .extracting(HazardZone::kind)
        .contains(HazardZone.Kind.HIGH_VOLTAGE);
    assertThat(bench.session.selection().subject()).isEmpty();
    bench.session.gate().turnBack();
    bench.session.undo();
    assertThat(watched()).isEmpty();
    bench.session.choose(Subject.parse("C202"));
    assertThat(bench.session.selection().subject()).contains(Subject.parse("C202"));
  }

  /** A later, lower reading doesn't open the way again; a job that is laid anew brings its own. */
  @Test
  void onceReadHigh_staysHigh_andEachJobBringsItsOwnReadings() {
    withMeter();
    bench.session.choose(Subject.parse("net:B_ATT"));
    assertThat(work().type("430")).isTrue();
    assertThat(work().type("0.1")).isTrue();
    assertThat(watched()).contains(HazardZone.Kind.HIGH_VOLTAGE);
    Job high = job();
    lay(false);
    assertThat(watched()).isEmpty();
    work().lay(high, true, kept::add);
    assertThat(watched()).contains(HazardZone.Kind.HIGH_VOLTAGE);
    assertThat(cardsWarn()).isTrue();
  }

  /** The zone that is asked for is named with picture and place. */
  @Test
  void readAboveTheLimits_theFindingTellsWhereTheZoneIsAskedFor() {
    withMeter();
    bench.session.choose(Subject.parse("net:B_ATT"));
    assertThat(work().type("430")).isTrue();
    assertThat(Suspects.of(work().unit().orElseThrow()).findings())
        .filteredOn(finding -> finding.code().equals("high-voltage-read"))
        .singleElement()
        .extracting(RuleFinding::remedy)
        .asString()
        .contains("Outline a high-voltage zone round", "C202.- on component at 1010,2300");
  }

  /** Out of circuit is the part walked to, not its node; and it holds for one reading. */
  @Test
  void outOfCircuit_isThePartsReading_andHoldsForOne() {
    withMeter();
    bench.session.choose(Subject.parse("net:A_ATT"));
    work().setLifted(true);
    assertThat(work().type("4.72u")).isTrue();
    assertThat(last().at()).isEqualTo(Subject.parse("C102"));
    assertThat(last().setting().lifted()).isTrue();
    assertThat(work().isLifted()).isFalse();
    assertThat(work().type("1")).isTrue();
    assertThat(last().setting().lifted()).isFalse();
    assertThat(last().at()).isEqualTo(Subject.parse("net:A_ATT"));
  }

  @Test
  void aNodesLimit_isSet_andTheUsualAgainWhereEmpty() {
    withMeter();
    bench.session.choose(Subject.parse("net:A_ATT"));
    assertThat(work().limit("5 mV")).isTrue();
    assertThat(work().limit().orElseThrow().volts()).isEqualTo(0.005);
    assertThat(work().limit("2 %")).isTrue();
    assertThat(work().limit().orElseThrow().fraction()).isEqualTo(0.02);
    assertThat(work().limit("")).isTrue();
    assertThat(job().limits()).isEmpty();
    assertThatThrownBy(() -> work().limit("much"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("5 mV");
  }

  @ParameterizedTest
  @CsvSource({"abc", "1..2", "5 apples", "''"})
  void whatIsNoReading_isRefused_andNothingNoted(String typed) {
    withMeter();
    bench.session.choose(Subject.parse("net:A_ATT"));
    int before = kept.size();
    assertThat(work().type(typed)).isFalse();
    assertThat(bench.session.notice().orElseThrow().kind().isRefusal()).isTrue();
    assertThat(kept).hasSize(before);
    assertThat(job().readings()).isEmpty();
  }

  /** Practice, story 7: a reading cannot be saved without the meter's ohms. */
  @Test
  void aVoltageWithoutAMeter_isRefused() {
    lay(false);
    bench.session.choose(Subject.parse("net:A_ATT"));
    assertThat(work().type("5.34")).isFalse();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.REFUSED);
    assertThat(job().readings()).isEmpty();
  }

  @Test
  void withoutAJob_orWithNothingChosen_orReadOnly_nothingIsNoted() {
    assertThat(work().type("1")).isFalse();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_JOB);
    withMeter();
    assertThat(work().type("1")).isFalse();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOTHING_CHOSEN);
    lay(true);
    assertThat(bench.session.room(BenchNotes.class).log(LogEntry.Kind.NOTE, List.of(), "x"))
        .isFalse();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.JOB_READ_ONLY);
  }

  @Test
  void atAPart_whatItsKindIsMeasuredIn_isAssumed() {
    withMeter();
    bench.session.choose(Subject.parse("R101"));
    assertThat(work().type("98k")).isTrue();
    assertThat(last().quantity()).isEqualTo(Quantity.RESISTANCE);
    bench.session.choose(Subject.parse("C102"));
    assertThat(work().type("9.1u")).isTrue();
    assertThat(last().quantity()).isEqualTo(Quantity.CAPACITANCE);
  }

  @Test
  void undoAndRedo_goBackThroughJobAndMap_inTheOrderOfTheEdits() {
    withMeter();
    bench.session.choose(Subject.parse("net:A_ATT"));
    work().type("1");
    bench.session.selection().mark(List.of(bench.place(TOP, "C102").key()));
    bench.session.room(PlacementCorrections.class).takeAway();
    work().type("2");
    int places = bench.session.map().placements().size();
    bench.session.undo();
    assertThat(job().readings()).hasSize(1);
    assertThat(bench.session.map().placements()).hasSize(places);
    bench.session.undo();
    assertThat(job().readings()).hasSize(1);
    assertThat(bench.session.map().placements()).hasSize(places + 1);
    bench.session.undo();
    assertThat(job().readings()).isEmpty();
    bench.session.redo();
    bench.session.redo();
    bench.session.redo();
    assertThat(job().readings()).hasSize(2);
    assertThat(bench.session.map().placements()).hasSize(places);
  }

  @Test
  void conditions_addUp_exceptWhereTheyContradict() {
    withMeter();
    PartId part = new PartId("C102");
    bench.session.choose(Subject.of(part));
    note(PartState.ORIGINAL, "");
    note(PartState.RESOLDERED, "7830");
    assertThat(job().condition(part).orElseThrow().states())
        .containsExactlyInAnyOrder(PartState.ORIGINAL, PartState.RESOLDERED);
    note(PartState.REPLACED, "");
    assertThat(job().condition(part).orElseThrow().states())
        .containsExactlyInAnyOrder(PartState.REPLACED, PartState.RESOLDERED);
    assertThat(job().condition(part).orElseThrow().dateCode()).isEqualTo("7830");
    assertThat(bench.session.room(ConditionEditor.class).notOriginal()).hasSize(1);
    note(PartState.ORIGINAL, "");
    assertThat(bench.session.room(ConditionEditor.class).notOriginal()).isEmpty();
  }

  private void note(PartState state, String dateCode) {
    bench.session.room(ConditionEditor.class).ask();
    ConditionEditor.WhichCondition asked =
        (ConditionEditor.WhichCondition) bench.session.question().orElseThrow();
    bench.session.room(ConditionEditor.class).answer(asked, state, "", dateCode, "");
  }

  @Test
  void hypotheses_keepTheirNumber_andTheirOutcome() {
    withMeter();
    assertThat(
            bench
                .session
                .room(BenchNotes.class)
                .suppose(List.of(new PartId("C102")), "leaks", "volts", "lift it"))
        .isTrue();
    assertThat(
            bench
                .session
                .room(BenchNotes.class)
                .refresh(new EntryId(1), Hypothesis.Result.DISPROVED, "no change"))
        .isTrue();
    assertThat(
            bench
                .session
                .room(BenchNotes.class)
                .refresh(new EntryId(9), Hypothesis.Result.CAUSE, ""))
        .isFalse();
    Hypothesis only = job().hypotheses().at(0);
    assertThat(only.result()).isEqualTo(Hypothesis.Result.DISPROVED);
    assertThat(only.outcome()).isEqualTo("no change");
  }
}
