package org.relegend.bench.suspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.bench.Condition;
import org.relegend.bench.DemoUnit;
import org.relegend.bench.EntryId;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.Job;
import org.relegend.bench.JobSamples;
import org.relegend.bench.JobTable;
import org.relegend.bench.LogEntry;
import org.relegend.bench.PartState;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.hazard.ZoneOutline;
import org.relegend.map.HazardZone;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.store.JobFolder;
import org.relegend.store.JobFormat;
import org.relegend.store.StoreException;

/** A technician's stories on the demo's faulty unit, with the figures of its design tables. */
class DemoStoriesTest {
  private static final Job JOB = load();
  private static final UnitReadings UNIT = DemoUnit.unit(JOB);
  private static final Suspects FOUND = Suspects.of(UNIT);

  private static Job load() {
    try {
      return JobFolder.openReadOnly(
              Path.of(System.getProperty("relegend.root", "..")).resolve("demo-data/job"))
          .job();
    } catch (StoreException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void theFault_comesFirst_withItsReasons() {
    Suspect first = FOUND.suspects().get(0);
    assertThat(first.part()).isEqualTo(new PartId("C102"));
    assertThat(String.join("; ", first.reasons()))
        .contains("33 k\u03a9")
        .contains("last good node (A_C1)")
        .contains("twin C202 was replaced");
  }

  /** Story 5: the nodes that differ, and which of them comes first in the order of the signal. */
  @Test
  void compare_flagsTheEightNodes_andTheFirstIsBehindTheFault() {
    List<TwinComparison> flagged =
        TwinComparison.inOrder(UNIT, SignalPath.of(UNIT)).stream()
            .filter(TwinComparison::flagged)
            .toList();
    assertThat(flagged)
        .extracting(comparison -> comparison.net().text())
        .containsExactlyInAnyOrder(
            "A_ATT", "A_VB1", "A_TAIL", "A_VC1", "A_VC2", "A_INV", "A_NON", "A_DOUT");
    assertThat(flagged.get(0).net()).isEqualTo(new NetId("A_ATT"));
    TwinComparison largest = TwinComparison.bySize(UNIT).get(0);
    assertThat(largest.net()).isEqualTo(new NetId("A_DOUT"));
    assertThat(TwinComparison.bySize(UNIT)).hasSize(20);
  }

  /** Story 6: which parts sit between the last good and the first bad node. */
  @Test
  void between_theLastGoodAndTheFirstBadNode_isTheFaultAlone() {
    assertThat(FOUND.bracket().lastGood()).containsExactly(new NetId("A_C1"));
    assertThat(FOUND.bracket().firstBad()).containsExactly(new NetId("A_ATT"));
    assertThat(FOUND.bracket().passed()).containsExactly(new PartId("C102"));
    assertThat(SignalPath.of(UNIT).between(new NetId("A_C1"), new NetId("A_ATT")))
        .containsExactly(new PartId("C102"));
  }

  /** Story 8: what isn't original. */
  @Test
  void conditions_thatAreNotOriginal_areTheSixReworkedParts_andTheDateCodeIsKept() {
    assertThat(
            JOB.conditions().stream()
                .filter(condition -> !condition.is(PartState.ORIGINAL))
                .map(condition -> condition.part().text()))
        .containsExactlyInAnyOrder("U102", "U101", "C202", "C2", "Q101", "R4");
    assertThat(new String(JobFormat.write(JOB), java.nio.charset.StandardCharsets.UTF_8))
        .contains("\"9114\"");
  }

  /** Story 9: the two halves of the op-amp are exchanged; both names lead to one place. */
  @Test
  void discrepancies_areTwelvePins_andReadingsFollowTheCopper() {
    assertThat(UNIT.map().discrepancies()).hasSize(12);
    assertThat(UNIT.netOf(Subject.parse("U102.7"))).contains(new NetId("A_DOUT"));
  }

  /** Trusted wrongly in the trade: the amplifier at its rail, renewed again and again. */
  @Test
  void theAmplifierThatObeys_isFarDown_thoughItWasReplaced() {
    int place = FOUND.suspects().stream().map(Suspect::part).toList().indexOf(new PartId("U102"));
    assertThat(place).isGreaterThan(3);
  }

  /** After the repair the readings of before no longer count. */
  @Test
  void afterTheRepair_theNodesReadWell() throws Exception {
    Job repaired =
        JOB.with(
            JobTable.LOG,
            JOB.log()
                .with(
                    new LogEntry(
                        JOB.nextLog(),
                        LogEntry.Kind.REPAIR,
                        List.of(Subject.of(new PartId("C102"))),
                        "renewed",
                        "mk",
                        JobSamples.NOON.plusSeconds(86_400L * 30))));
    assertThat(repaired.currentReadings()).isEmpty();
    assertThat(repaired.readingsAsFound()).hasSize(JOB.readings().size());
    assertThat(Suspects.of(DemoUnit.unit(repaired)).findings())
        .noneMatch(finding -> finding.code().startsWith("capacitor-passes"));
  }

  private static double score(Job job, String part) {
    return Suspects.of(DemoUnit.unit(job)).suspects().stream()
        .filter(suspect -> suspect.part().text().equals(part))
        .findFirst()
        .orElseThrow()
        .score();
  }

  @ParameterizedTest(name = "{0} marked {1}")
  @CsvSource({"R106, RESOLDERED", "R106, REPLACED", "R106, DAMAGED", "R107, SOCKETED"})
  void suspicion_risesWhenAPartIsMarked(String part, PartState state) {
    Condition marked =
        new Condition(
            new PartId(part), EnumSet.of(state), "", "", "", List.of(), "", JobSamples.NOON);
    assertThat(score(JOB.with(JobTable.CONDITIONS, JOB.conditions().with(marked)), part))
        .isGreaterThan(1.5 * score(JOB, part));
  }

  @Test
  void aDisprovedHypothesis_dropsItsPart_andStays() {
    Hypothesis leaks =
        new Hypothesis(
            new EntryId(1),
            List.of(new PartId("R106")),
            "open",
            "",
            "measured",
            Hypothesis.Result.OPEN,
            "",
            "",
            JobSamples.NOON);
    Job open = JOB.with(JobTable.HYPOTHESES, JOB.hypotheses().with(leaks));
    assertThat(score(open, "R106")).isEqualTo(score(JOB, "R106"));
    Job disproved =
        open.with(
            JobTable.HYPOTHESES,
            open.hypotheses().with(leaks.with(Hypothesis.Result.DISPROVED, "46.8k")));
    assertThat(score(disproved, "R106")).isLessThan(0.1 * score(JOB, "R106"));
    assertThat(disproved.hypotheses()).hasSize(1);
  }

  /** What looks perfect is no better for it: a resistor without a mark read 650 for 100 ohms. */
  @ParameterizedTest
  @ValueSource(strings = {"C102", "R106", "U102", "R118"})
  void looksAlone_clearNothing(String part) {
    Job unseen = JOB.with(JobTable.CONDITIONS, JOB.conditions().without(new PartId(part)));
    Condition perfect =
        new Condition(
            new PartId(part),
            EnumSet.of(PartState.ORIGINAL),
            "",
            "",
            "looks perfect",
            List.of(),
            "",
            JobSamples.NOON);
    Job seen = unseen.with(JobTable.CONDITIONS, unseen.conditions().with(perfect));
    assertThat(score(seen, part)).isCloseTo(score(unseen, part), within(1e-9));
  }

  /** A true fault that was found needn't be the cause: both stay, and the other is suspected on. */
  @Test
  void aFaultThatWasFound_doesNotEndTheSearch() {
    Hypothesis drifted =
        new Hypothesis(
            new EntryId(1),
            List.of(new PartId("R118")),
            "drifted",
            "",
            "measured",
            Hypothesis.Result.FOUND,
            "390k",
            "",
            JobSamples.NOON);
    Job found = JOB.with(JobTable.HYPOTHESES, JOB.hypotheses().with(drifted));
    assertThat(Suspects.of(DemoUnit.unit(found)).suspects().get(0).part())
        .isEqualTo(new PartId("C102"));
    Hypothesis cause =
        new Hypothesis(
            new EntryId(2),
            List.of(new PartId("C102")),
            "leaks",
            "",
            "lifted",
            Hypothesis.Result.CAUSE,
            "",
            "",
            JobSamples.NOON);
    assertThat(found.with(JobTable.HYPOTHESES, found.hypotheses().with(cause)).hypotheses())
        .extracting(Hypothesis::result)
        .containsExactly(Hypothesis.Result.FOUND, Hypothesis.Result.CAUSE);
  }

  /** Three values of a part: what was fitted counts for the unit, whatever the drawing has. */
  @Test
  void theFittedValue_countsBeforeTheDrawnOne() {
    Condition other =
        new Condition(
            new PartId("R106"),
            EnumSet.of(PartState.REPLACED),
            "100k",
            "",
            "",
            List.of(),
            "",
            JobSamples.NOON);
    UnitReadings unit = DemoUnit.unit(JOB.with(JobTable.CONDITIONS, JOB.conditions().with(other)));
    assertThat(unit.ohms(new PartId("R106"))).hasValue(100e3);
    assertThat(UNIT.ohms(new PartId("R106"))).hasValue(47e3);
  }

  /** With all conditions of the demo's unit, the true parts still come out in the first three. */
  static Stream<String> faults() {
    return HypothesesTest.faults();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("faults")
  void eachFault_onTheReworkedUnit_isInTheFirstThree(String fault) {
    Job job =
        DemoUnit.with(DemoUnit.hypotheses().get(fault)).with(JobTable.CONDITIONS, JOB.conditions());
    assertThat(
            Suspects.of(DemoUnit.unit(job)).suspects().stream()
                .limit(3)
                .map(suspect -> suspect.part().text()))
        .contains(fault.split(" ")[0]);
  }

  /**
   * Whatever was read, no place in a hazard zone is ever proposed; and nothing throws, however odd
   * the readings are.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void nextReading_isNeverInAHazardZone(long seed) {
    Random random = new Random(seed);
    List<NetId> nets = new ArrayList<>();
    UNIT.map().nets().forEach(net -> nets.add(net.id()));
    Job job = JobSamples.blank();
    for (int i = 0; i < random.nextInt(40); i++) {
      String net = nets.get(random.nextInt(nets.size())).text();
      job = DemoUnit.read(job, net, random.nextGaussian() * 20);
    }
    for (String part : List.of("C1", "F1", "T1", "SW1", "R1")) { // all of them on the mains
      job =
          job.with(
              JobTable.CONDITIONS,
              job.conditions()
                  .with(
                      new Condition(
                          new PartId(part),
                          EnumSet.of(PartState.DAMAGED, PartState.MISSING),
                          "",
                          "",
                          "",
                          List.of(),
                          "",
                          JobSamples.NOON)));
    }
    for (int i = 0; i < 6; i++) {
      NextReading next = Suspects.of(DemoUnit.unit(job)).next().orElseThrow();
      Subject touched =
          next.where().indexOf('.') > 0
              ? Subject.of(PinRef.parse(next.where()))
              : Subject.of(new PartId(next.where()));
      assertThat(inZone(touched)).as(next.where()).isFalse();
      if (!(next.at() instanceof Subject.OfNet net)) {
        break;
      }
      assertThat(net.net().text()).doesNotStartWith("MAINS");
      job = DemoUnit.read(job, net.net().text(), random.nextGaussian() * 10);
    }
  }

  private static boolean inZone(Subject subject) {
    Set<Boolean> in = new HashSet<>();
    for (Placement placement : UNIT.circuit().index().placementsOf(subject)) {
      for (HazardZone zone : UNIT.map().zones()) {
        if (zone.picture().equals(placement.picture())) {
          in.add(ZoneOutline.contains(zone.outline(), placement.at()));
        }
      }
    }
    return in.contains(true);
  }
}
