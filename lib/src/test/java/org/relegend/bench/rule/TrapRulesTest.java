package org.relegend.bench.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.bench.rule.RuleFixture.coupling;
import static org.relegend.bench.rule.RuleFixture.divider;
import static org.relegend.bench.rule.RuleFixture.factor;
import static org.relegend.bench.rule.RuleFixture.findings;
import static org.relegend.bench.rule.RuleFixture.ohms;
import static org.relegend.bench.rule.RuleFixture.only;
import static org.relegend.bench.rule.RuleFixture.twins;
import static org.relegend.bench.rule.RuleFixture.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.bench.Boards;
import org.relegend.bench.DemoUnit;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.JobSamples;
import org.relegend.bench.JobTable;
import org.relegend.bench.LogEntry;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/** What misleads: the rules that warn, once where they fire and once where they must not. */
class TrapRulesTest {
  // IEC 60062 tolerances; in circuit nothing can raise a resistance (practice reference C).
  private static UnitReadings measured(double ohms, boolean lifted) {
    return new Boards()
        .parts("R1 resistor 330k 1=A_X 2=A_Y")
        .job(job -> ohms(job, "R1", ohms, lifted))
        .unit();
  }

  @Test
  void value_fires_onTooMuch_alsoInCircuit_andOnTooLittleOutOfIt() {
    assertThat(factor(only(measured(650e3, false), "value"), "R1"))
        .isEqualTo(LikelihoodRatio.STRONG);
    assertThat(factor(only(measured(104e3, true), "value"), "R1"))
        .isEqualTo(LikelihoodRatio.STRONG);
  }

  @Test
  void value_isQuiet_withinTolerance_andTellsTheTrapOfTooLittleInCircuit() {
    assertThat(findings(measured(340e3, true), "value")).isEmpty();
    assertThat(findings(measured(104e3, false), "value")).isEmpty();
    assertThat(only(measured(104e3, false), "in-circuit-value").blames()).isEmpty();
  }

  // EIA-476 date codes of year and week.
  private static UnitReadings dated(String code, PartState state) {
    Boards board = new Boards().parts("U1 ic - 1=A_X", "U2 ic - 1=A_X", "U3 ic - 1=A_X");
    return board
        .job(job -> with(job, "U1", PartState.ORIGINAL, "7829"))
        .job(job -> with(job, "U2", PartState.ORIGINAL, "7831"))
        .job(job -> with(job, "U3", state, code))
        .unit();
  }

  @Test
  void laterDate_fires_onACodeYearsLaterThanTheRest() {
    assertThat(factor(only(dated("9114", PartState.ORIGINAL), "later-date"), "U3"))
        .isGreaterThan(1);
  }

  @Test
  void laterDate_isQuiet_onOneOfTheBatch_andWhereItIsKnownToBeReplaced() {
    assertThat(findings(dated("7836", PartState.ORIGINAL), "later-date")).isEmpty();
    assertThat(findings(dated("9114", PartState.REPLACED), "later-date")).isEmpty();
  }

  // Common practice: twins are of one make and age.
  @Test
  void twinReplaced_fires_onTheOldOne_andNotWhereBothAreNew() {
    UnitReadings one = twins(2).job(job -> with(job, "R21", PartState.REPLACED, "")).unit();
    assertThat(factor(only(one, "twin-replaced"), "R11")).isEqualTo(LikelihoodRatio.WEAK);
    UnitReadings both =
        twins(2)
            .job(job -> with(job, "R21", PartState.REPLACED, ""))
            .job(job -> with(job, "R11", PartState.REPLACED, ""))
            .unit();
    assertThat(findings(both, "twin-replaced")).isEmpty();
  }

  // Kept, flagged, explained: an intermittent fault or a slipped probe (common practice).
  @Test
  void disagreeing_fires_onTwoReadingsOfOnePlace_andTheLaterCounts() {
    UnitReadings unit = divider(5).read("A_TAP", 9).unit();
    RuleFinding finding = only(unit, "readings-disagree");
    assertThat(finding.message()).contains("5 V").contains("9 V").contains("last one counts");
    assertThat(findings(unit, "current-sum")).hasSize(1);
  }

  @Test
  void disagreeing_isQuiet_onTheSameAgain_andUnderOtherConditions() {
    assertThat(findings(divider(5).read("A_TAP", 5.01).unit(), "readings-disagree")).isEmpty();
    MeasurementSetup loaded =
        new MeasurementSetup(
            "", Instrument.DIGITAL_METER, MeasurementSetup.Power.ON, false, "loaded");
    UnitReadings other = divider(5).job(job -> DemoUnit.read(job, "A_TAP", 9, loaded)).unit();
    assertThat(findings(other, "readings-disagree")).isEmpty();
  }

  // SS0602, page 7: the meter must have ten times the node's resistance.
  @Test
  void fragileNode_fires_onAReadingThatTheMeterMade_andNotOnAStiffOne() {
    Boards high =
        new Boards()
            .parts("R1 resistor 2M2 1=A_T 2=VN", "Q1 njfet - D=VP G=A_T S=A_S")
            .nominal("VN", -15.35);
    RuleFinding finding = only(high.read("A_T", -12.58).unit(), "fragile-node");
    assertThat(finding.message()).contains("2.2 M\u03a9").contains("-12.58 V").contains("-15.35 V");
    assertThat(findings(divider(5).unit(), "fragile-node")).isEmpty();
  }

  // A meter of 3 1/2 digits shows a two-thousandth of its range (common practice).
  @Test
  void coarseRange_fires_whereMillivoltsMatter_andNotOnAFineRange() {
    MeasurementSetup coarse =
        new MeasurementSetup(
            "", Instrument.DIGITAL_METER, MeasurementSetup.Power.ON, false, "range 200 V");
    MeasurementSetup fine =
        new MeasurementSetup(
            "", Instrument.DIGITAL_METER, MeasurementSetup.Power.ON, false, "200 mV range");
    Boards board = new Boards().parts("R1 resistor 1k 1=A_V 2=0V").nominal("A_V", -0.005);
    UnitReadings unit = board.job(job -> DemoUnit.read(job, "A_V", 0.1, coarse)).unit();
    assertThat(only(unit, "coarse-range").message()).contains("100 mV");
    Boards other = new Boards().parts("R1 resistor 1k 1=A_V 2=0V").nominal("A_V", -0.005);
    assertThat(
            findings(other.job(job -> DemoUnit.read(job, "A_V", 0.1, fine)).unit(), "coarse-range"))
        .isEmpty();
  }

  // Ohm's law: no voltage across it, no current through its leak.
  @Test
  void capacitorNotTested_fires_betweenEqualEnds_andNotAcrossAVoltage() {
    assertThat(findings(coupling(10).unit(), "capacitor-not-tested")).hasSize(1);
    assertThat(findings(coupling(0).unit(), "capacitor-not-tested")).isEmpty();
  }

  // Pins counted from a drawing that the board doesn't follow (practice reference, traps).
  @Test
  void pinDrawnOtherwise_fires_onAPinThatTheDrawingHasElsewhere_andNotOnOthers() {
    assertThat(only(at("U102.1"), "pin-drawn-otherwise").message())
        .contains("A_BUFOUT")
        .contains("A_DOUT");
    assertThat(findings(at("U102.8"), "pin-drawn-otherwise")).isEmpty();
  }

  private static UnitReadings at(String pin) {
    Job job = JobSamples.blank();
    return DemoUnit.unit(
        job.with(
            JobTable.READINGS,
            job.readings()
                .with(
                    new Reading(
                        job.nextReading(),
                        Subject.parse(pin),
                        new Amount(Quantity.VOLTAGE, 0),
                        MeasurementSetup.with(Instrument.DIGITAL_METER),
                        "",
                        JobSamples.NOON))));
  }

  // The map's own list of parts and nets.
  @Test
  void notInTheMap_fires_onWhatTheMapHasNot_andNotOnWhatItHas() {
    UnitReadings unit =
        divider(5)
            .read("A_NOWHERE", 1)
            .job(job -> with(job, "R99", PartState.REPLACED, ""))
            .job(job -> ohms(job, "R98", 10, true))
            .unit();
    assertThat(findings(unit, "not-in-the-map")).hasSize(3);
    assertThat(findings(divider(5).unit(), "not-in-the-map")).isEmpty();
  }

  // Touched and cleared, renewed and dead again (common practice; practice reference C).
  @Test
  void touch_fires_onTheAreaAround_andNotWithoutSuchAnEntry() {
    Job job = JobSamples.blank();
    LogEntry entry =
        new LogEntry(
            job.nextLog(),
            LogEntry.Kind.TOUCH,
            List.of(Subject.of(new PartId("U101"))),
            "clears",
            "",
            JobSamples.NOON);
    RuleFinding finding =
        only(DemoUnit.unit(job.with(JobTable.LOG, job.log().with(entry))), "touch");
    assertThat(finding.blames()).hasSize(5); // itself and what sits beside it
    assertThat(finding.blames()).allMatch(blame -> blame.factor() < LikelihoodRatio.MEDIUM);
    assertThat(findings(DemoUnit.unit(job), "touch")).isEmpty();
  }

  // Pads pulled while unsoldering leave other pins open (common practice; practice reference C).
  @Test
  void beepAgain_fires_onWhatWasUnsoldered_withAllPinsOfItsNets_andNotOnOriginals() {
    UnitReadings reworked = DemoUnit.unit(with(JobSamples.blank(), "C202", PartState.REPLACED, ""));
    assertThat(only(reworked, "beep-again").message())
        .contains("B_C1 (C202.+ Q201.C R204.2)")
        .contains("B_ATT");
    UnitReadings socketed = DemoUnit.unit(with(JobSamples.blank(), "U102", PartState.SOCKETED, ""));
    assertThat(only(socketed, "beep-again").remedy()).contains("at the pad");
    UnitReadings original = DemoUnit.unit(with(JobSamples.blank(), "C202", PartState.ORIGINAL, ""));
    assertThat(findings(original, "beep-again")).isEmpty();
  }
}
