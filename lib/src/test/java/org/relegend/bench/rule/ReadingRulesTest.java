package org.relegend.bench.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.bench.rule.RuleFixture.coupling;
import static org.relegend.bench.rule.RuleFixture.divider;
import static org.relegend.bench.rule.RuleFixture.factor;
import static org.relegend.bench.rule.RuleFixture.findings;
import static org.relegend.bench.rule.RuleFixture.only;
import static org.relegend.bench.rule.RuleFixture.twins;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.bench.Boards;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.JobSamples;
import org.relegend.bench.JobTable;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.NodeLimit;
import org.relegend.bench.Reading;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/** Each rule once where it fires and once where it must not; its source stands above the pair. */
class ReadingRulesTest {
  // A regulated rail holds within 5 % (common practice; practice reference F).
  private static Boards supply() {
    return new Boards()
        .parts(
            "Q1 npn - E=VP B=ZP C=RAW", "R1 resistor 1k 1=RAW 2=ZP", "R2 resistor 10k 1=VP 2=A_X")
        .nominal("VP", 15)
        .nominal("RAW", 23);
  }

  @Test
  void rail_fires_whereARegulatedRailIsOffByMoreThanFivePercent() {
    RuleFinding finding = only(supply().read("VP", 13.9).unit(), "rail");
    assertThat(finding.message()).contains("VP").contains("13.9 V").contains("15 V");
    assertThat(factor(finding, "Q1")).isGreaterThan(factor(finding, "R2"));
  }

  @Test
  void rail_isQuiet_withinFivePercent_andOnARailThatFollowsTheMains() {
    assertThat(findings(supply().read("VP", 14.4).unit(), "rail")).isEmpty();
    Boards raw =
        new Boards().parts("BR1 bridge 1A PLUS=RAW MINUS=0V AC1=X AC2=Y").nominal("RAW", 23);
    assertThat(findings(raw.read("RAW", 21.2).unit(), "rail")).isEmpty();
  }

  // Kirchhoff's current law: at the tap of a divider what comes in goes out.
  @Test
  void currentSum_fires_andNamesTheOneThatIsOpen() {
    RuleFinding finding = only(divider(10).unit(), "current-sum");
    assertThat(factor(finding, "R2")).isEqualTo(LikelihoodRatio.STRONG);
    assertThat(factor(finding, "R1")).isLessThan(LikelihoodRatio.MEDIUM);
  }

  @Test
  void currentSum_fires_andTellsWhatValueWouldFit() {
    RuleFinding finding = only(divider(7).unit(), "current-sum"); // 10 V x 23.3k / 33.3k
    assertThat(finding.blames())
        .anySatisfy(
            blame -> {
              assertThat(blame.part().text()).isEqualTo("R2");
              assertThat(blame.reason()).contains("23 k\u03a9");
            });
    assertThat(factor(finding, "R2")).isGreaterThan(factor(finding, "R1")); // up, not down
  }

  @Test
  void currentSum_isQuiet_withinTheResistorsTolerance() {
    assertThat(findings(divider(5.1).unit(), "current-sum")).isEmpty();
  }

  @Test
  void currentSum_isQuiet_whereATransistorTakesItsUsualCurrent() {
    Boards stage =
        new Boards()
            .parts("R1 resistor 4k7 1=VP 2=A_C", "Q1 npn - E=0V B=A_B C=A_C")
            .nominal("VP", 15)
            .nominal("A_C", 9);
    assertThat(findings(stage.read("A_C", 8.6).unit(), "current-sum")).isEmpty();
  }

  // A capacitor blocks direct current. Figures: 100k and a leak of 100k from 10 V give 5 V.
  @Test
  void capacitor_fires_andTellsItsLeak() {
    RuleFinding finding = only(coupling(5).unit(), "capacitor-passes-direct-current");
    assertThat(factor(finding, "C1")).isEqualTo(LikelihoodRatio.STRONG);
    assertThat(finding.message()).contains("100 k\u03a9").contains("50 \u00b5A");
  }

  @Test
  void capacitor_isQuiet_whereNothingFlows_orAnotherPartMayBringIt() {
    String code = "capacitor-passes-direct-current";
    assertThat(findings(coupling(0.002).unit(), code)).isEmpty();
    Boards driven = coupling(5).parts("Q1 npn - E=A_TO B=A_FROM C=VP");
    assertThat(findings(driven.unit(), code)).isEmpty();
  }

  // Silicon: 0.5 to 0.7 V; alike is a short, far above is open (Army TM 11-6125-256-34).
  private static Boards follower(double base, double emitter) {
    return new Boards()
        .parts("Q1 npn - E=A_E B=A_B C=VP", "R1 resistor 1k 1=A_E 2=0V")
        .nominal("VP", 15)
        .nominal("A_B", 2.5)
        .nominal("A_E", 1.85)
        .read("A_B", base)
        .read("A_E", emitter);
  }

  @Test
  void junction_fires_onAnOpenOne_andOnAShort() {
    assertThat(only(follower(2.5, 0.1).unit(), "junction-drop").message()).contains("open");
    assertThat(only(follower(2.5, 2.49).unit(), "junction-drop").message()).contains("horted");
    RuleFinding off = only(follower(1.0, 1.85).unit(), "junction-drop");
    assertThat(factor(off, "Q1")).isLessThan(LikelihoodRatio.MEDIUM);
  }

  @Test
  void junction_isQuiet_onSixtyFiveHundredths_andOnPnpTheOtherWay() {
    assertThat(findings(follower(2.5, 1.85).unit(), "junction-drop")).isEmpty();
    Boards pnp = new Boards().parts("Q1 pnp - E=A_E B=A_B C=0V").read("A_E", 5).read("A_B", 4.35);
    assertThat(findings(pnp.unit(), "junction-drop")).isEmpty();
  }

  // Two silicon junctions in series drop 1.0 to 1.4 V (common practice for Darlingtons).
  @Test
  void junction_isQuiet_onADarlingtonsTwoJunctions_andFiresFarAboveThem() {
    assertThat(findings(darlington(1.3).unit(), "junction-drop")).isEmpty();
    assertThat(only(darlington(2.4).unit(), "junction-drop").message()).contains("open");
  }

  private static Boards darlington(double drop) {
    return new Boards()
        .parts("Q1 npn-darlington - E=A_E B=A_B C=VP")
        .nominal("VP", 15)
        .read("A_E", 5)
        .read("A_B", 5 + drop);
  }

  @Test
  void junction_fires_onADiodeTestOfThePart_andNotOnAGoodOne() {
    Boards board = new Boards().parts("D1 diode - A=A_X K=A_Y");
    assertThat(findings(board.job(job -> dropAt(job, 0.62)).unit(), "junction-drop")).isEmpty();
    Boards again = new Boards().parts("D1 diode - A=A_X K=A_Y");
    assertThat(only(again.job(job -> dropAt(job, 2.4)).unit(), "junction-drop").message())
        .contains("open");
  }

  private static List<RuleFinding> tested(String kind, double volts, MeasurementSetup.Power power) {
    return findings(
        new Boards()
            .parts("D1 " + kind + " - A=A_X K=A_Y")
            .job(
                job ->
                    dropAt(job, volts, MeasurementSetup.with(Instrument.DIGITAL_METER).with(power)))
            .unit(),
        "junction-drop");
  }

  @Test
  void junction_isQuiet_onAVoltageReadAtThePartUnderPower() {
    assertThat(tested("diode", 12.4, MeasurementSetup.Power.ON)).isEmpty();
    assertThat(tested("diode", 12.4, MeasurementSetup.Power.UNSTATED)).isEmpty();
    assertThat(tested("diode", 2.4, MeasurementSetup.Power.OFF)).hasSize(1);
  }

  // Schottky about 0.15 to 0.45 V, germanium about 0.2 to 0.4 V in a diode test (common practice).
  @Test
  void junction_knowsSchottkyAndGermanium_byTheirKind() {
    assertThat(tested("schottky", 0.22, MeasurementSetup.Power.OFF)).isEmpty();
    assertThat(tested("germanium-diode", 0.28, MeasurementSetup.Power.OFF)).isEmpty();
    assertThat(tested("diode", 0.28, MeasurementSetup.Power.OFF)).hasSize(1);
    assertThat(tested("schottky", 0.05, MeasurementSetup.Power.OFF)).hasSize(1);
    assertThat(tested("germanium-diode", 0.6, MeasurementSetup.Power.OFF)).hasSize(1);
  }

  private static Job dropAt(Job job, double volts) {
    return dropAt(
        job,
        volts,
        MeasurementSetup.with(Instrument.DIGITAL_METER).with(MeasurementSetup.Power.OFF));
  }

  private static Job dropAt(Job job, double volts, MeasurementSetup setting) {
    return job.with(
        JobTable.READINGS,
        job.readings()
            .with(
                new Reading(
                    job.nextReading(),
                    Subject.of(new PartId("D1")),
                    new Amount(Quantity.VOLTAGE, volts),
                    setting,
                    "",
                    JobSamples.NOON)));
  }

  // Op amp: in a loop inputs equal within mV (university notes); without, the output follows the
  // sign of the inputs to a rail (standards reference 10).
  private static Boards amplifier(double plus, double minus, double out) {
    return new Boards()
        .parts(
            "U1 opamp TL071 2=A_M 3=A_P 4=VN 6=A_OUT 7=VP",
            "R1 resistor 10k 1=A_IN 2=A_M",
            "R2 resistor 33k 1=A_M 2=A_OUT",
            "R3 resistor 10k 1=A_P 2=0V")
        .nominal("VP", 15)
        .nominal("VN", -15)
        .nominal("A_OUT", 1)
        .read("A_P", plus)
        .read("A_M", minus)
        .read("A_OUT", out);
  }

  @Test
  void inputsEqual_fires_whereTheyDifferThoughTheOutputIsFree() {
    assertThat(factor(only(amplifier(0, 1, 3).unit(), "inputs-equal"), "U1"))
        .isEqualTo(LikelihoodRatio.MEDIUM);
  }

  @Test
  void inputsEqual_isQuiet_whereTheyAreEqualAndTheOutputGood_andExcusesWhereItIsBad() {
    assertThat(findings(amplifier(0, 0.001, 1).unit(), "inputs-equal")).isEmpty();
    assertThat(factor(only(amplifier(0, 0.001, 5).unit(), "inputs-equal"), "U1")).isLessThan(1);
  }

  @Test
  void outputAtRail_excuses_whereTheAmplifierObeys() {
    RuleFinding finding = only(amplifier(0.4, 0, 13.8).unit(), "output-at-rail");
    assertThat(finding.message()).contains("obeys");
    assertThat(factor(finding, "U1")).isLessThan(1);
    assertThat(factor(finding, "R2")).isGreaterThan(1);
  }

  @Test
  void outputAtRail_accuses_whereItStandsAgainstItsInputs() {
    RuleFinding finding = only(amplifier(0.4, 0, -13.8).unit(), "output-at-rail");
    assertThat(factor(finding, "U1")).isEqualTo(LikelihoodRatio.STRONG);
  }

  @Test
  void outputAtRail_isQuiet_inBetween() {
    assertThat(findings(amplifier(0.4, 0, 5).unit(), "output-at-rail")).isEmpty();
  }

  // Collector at the supply: no current, open or cut off (transistor fault-finding texts).
  private static Boards pair(double a, double b, double base) {
    return new Boards()
        .parts(
            "Q1 npn - E=A_TAIL B=A_B1 C=A_C1",
            "Q2 npn - E=A_TAIL B=A_B2 C=A_C2",
            "R1 resistor 4k7 1=VP 2=A_C1",
            "R2 resistor 4k7 1=VP 2=A_C2",
            "R3 resistor 10k 1=A_TAIL 2=VN")
        .nominal("VP", 15)
        .nominal("VN", -15)
        .nominal("A_C1", 11.6)
        .nominal("A_C2", 11.6)
        .nominal("A_B1", 0.01)
        .read("A_C1", a)
        .read("A_C2", b)
        .read("A_B1", base);
  }

  @Test
  void noCurrent_fires_onTheOneOfAPairThatTakesNone() {
    RuleFinding finding = only(pair(8.3, 14.99, 0.01).unit(), "no-current");
    assertThat(factor(finding, "Q2")).isEqualTo(LikelihoodRatio.STRONG);
    assertThat(factor(finding, "R3")).isEqualTo(1);
  }

  @Test
  void noCurrent_fires_onWhatDrawsTheCommonCurrent_whereNoneTakesAny() {
    RuleFinding finding = findings(pair(14.99, 14.99, 0.01).unit(), "no-current").get(0);
    assertThat(factor(finding, "R3")).isGreaterThan(LikelihoodRatio.MEDIUM);
  }

  @Test
  void noCurrent_isQuiet_whereBothConduct_andWhereABadBaseExplainsIt() {
    assertThat(findings(pair(11.6, 11.6, 0.01).unit(), "no-current")).isEmpty();
    assertThat(findings(pair(8.3, 14.99, 0.3).unit(), "no-current")).isEmpty();
  }

  // Ohm's law: without current there is no voltage across a resistor.
  @Test
  void unexplainedVoltage_fires_onANodeThatOnlyGatesAndResistorsHang() {
    Boards gate =
        new Boards()
            .parts(
                "Q1 njfet - D=VP G=A_G S=A_S", "R1 resistor 1M 1=A_G 2=0V", "C1 cap 1u 1=A_X 2=A_G")
            .nominal("VP", 15);
    RuleFinding finding = only(gate.read("A_G", 2).unit(), "unexplained-voltage");
    assertThat(finding.blames()).hasSize(3);
  }

  @Test
  void unexplainedVoltage_isQuiet_onOneThatStandsWhereItShould() {
    Boards gate =
        new Boards()
            .parts("Q1 njfet - D=VP G=A_G S=A_S", "R1 resistor 1M 1=A_G 2=0V")
            .nominal("VP", 15);
    assertThat(findings(gate.read("A_G", 0.01).unit(), "unexplained-voltage")).isEmpty();
  }

  // Twin comparison (common practice): a node that differs between neighbours that don't.
  @Test
  void twinDiffers_fires_onTheOneNodeBetweenEqualNeighbours() {
    List<RuleFinding> found = findings(twins(2.5).unit(), "twin-differs");
    assertThat(found).isNotEmpty();
    assertThat(found.get(0).blames().stream().map(blame -> blame.part().text()))
        .contains("R11", "R12", "U1");
  }

  @Test
  void twinDiffers_isQuiet_whereTheyAreAlike() {
    assertThat(findings(twins(2.03).unit(), "twin-differs")).isEmpty();
  }

  @Test
  void everyRule_hasACodeOfItsOwn_andASource() {
    assertThat(ReadingRules.ALL.stream().map(ReadingRule::code))
        .doesNotHaveDuplicates()
        .hasSize(22);
    assertThat(ReadingRules.ALL).allSatisfy(rule -> assertThat(rule.source()).isNotBlank());
  }

  /** A node with a limit of its own is judged by it. */
  @Test
  void limit_ofOneNode_isItsOwn() {
    Boards board =
        new Boards().parts("R1 resistor 1k 1=A_V 2=0V").nominal("A_V", 0.1).read("A_V", 0.13);
    UnitReadings usual = board.unit();
    assertThat(usual.verdict(usual.netsRead().get(0))).isEqualTo(NodeVerdict.GOOD);
    Subject at = Subject.of(usual.netsRead().get(0));
    UnitReadings narrow =
        board
            .job(job -> job.with(JobTable.LIMITS, job.limits().with(new NodeLimit(at, 0, 0.005))))
            .unit();
    assertThat(narrow.verdict(narrow.netsRead().get(0))).isEqualTo(NodeVerdict.BAD);
  }
}
