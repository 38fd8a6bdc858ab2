package org.relegend.bench.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.Boards;
import org.relegend.bench.Condition;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.JobSamples;
import org.relegend.bench.JobTable;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/** Small circuits and questions that the tests of rules share. */
final class RuleFixture {
  private RuleFixture() {}

  static List<RuleFinding> findings(UnitReadings unit, String code) {
    return ReadingRules.inspect(unit).stream()
        .filter(finding -> finding.code().equals(code))
        .toList();
  }

  static RuleFinding only(UnitReadings unit, String code) {
    List<RuleFinding> found = findings(unit, code);
    assertThat(found).as(code).hasSize(1);
    return found.get(0);
  }

  static double factor(RuleFinding finding, String part) {
    Optional<LikelihoodRatio> blame =
        finding.blames().stream().filter(b -> b.part().text().equals(part)).findFirst();
    return blame.map(LikelihoodRatio::factor).orElse(1.0);
  }

  static Job with(Job job, String part, PartState state, String code) {
    return job.with(
        JobTable.CONDITIONS,
        job.conditions()
            .with(
                new Condition(
                    new PartId(part),
                    EnumSet.of(state),
                    "",
                    code,
                    "",
                    List.of(),
                    "",
                    JobSamples.NOON)));
  }

  static Job ohms(Job job, String part, double ohms, boolean lifted) {
    MeasurementSetup setting =
        new MeasurementSetup("", Instrument.DIGITAL_METER, MeasurementSetup.Power.OFF, lifted, "");
    return job.with(
        JobTable.READINGS,
        job.readings()
            .with(
                new Reading(
                    job.nextReading(),
                    Subject.of(new PartId(part)),
                    new Amount(Quantity.RESISTANCE, ohms),
                    setting,
                    "",
                    JobSamples.NOON)));
  }

  static Boards divider(double volts) {
    return new Boards()
        .parts(
            "R1 resistor 10k 1=VP 2=A_TAP",
            "R2 resistor 10k 1=A_TAP 2=0V",
            "C9 cap 1n 1=A_TAP 2=0V")
        .nominal("VP", 10)
        .read("A_TAP", volts);
  }

  static Boards coupling(double volts) {
    return new Boards()
        .parts("C1 cap-pol 10u +=A_FROM -=A_TO", "R1 resistor 100k 1=A_TO 2=0V")
        .read("A_FROM", 10)
        .read("A_TO", volts);
  }

  static Boards twins(double middle) {
    Boards boards = new Boards();
    for (String c : List.of("A", "B")) {
      int n = c.equals("A") ? 1 : 2;
      boards.parts(
          "R%d1 resistor 10k 1=%s_X 2=%s_Y".formatted(n, c, c),
          "R%d2 resistor 10k 1=%s_Y 2=%s_Z".formatted(n, c, c),
          "U%d ic - 1=%s_Y".formatted(n, c));
    }
    return boards
        .read("A_X", 1)
        .read("A_Y", middle)
        .read("A_Z", 3)
        .read("B_X", 1)
        .read("B_Y", 2)
        .read("B_Z", 3);
  }
}
