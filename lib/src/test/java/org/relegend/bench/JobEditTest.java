package org.relegend.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.map.EditRefusedException;
import org.relegend.map.History;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

class JobEditTest {
  private static final Subject NET = Subject.parse("net:A_C1");

  @Test
  void undo_bringsBackTheFirstJob_andRedoTheLast() throws EditRefusedException {
    History<Job, JobEdit> history = new History<>(JobSamples.blank());
    for (JobEdit edit : JobSamples.edits()) {
      history.apply(edit);
      assertThat(history.undoLabel()).isPresent();
    }
    Job last = history.current();
    assertThat(last).isEqualTo(JobSamples.full());
    while (history.undo().isPresent()) {
      assertThat(history.current()).isNotEqualTo(last);
    }
    assertThat(history.current()).isEqualTo(JobSamples.blank());
    while (history.redo().isPresent()) {
      assertThat(history.redoLabel()).isNotNull();
    }
    assertThat(history.current()).isEqualTo(last);
  }

  @Test
  void removing_takesAwayWhatWasPut() throws EditRefusedException {
    Job job = JobSamples.full();
    EntryId first = new EntryId(1);
    List<JobEdit> removals =
        List.of(
            JobTable.PHOTOS.remove(job.photos().at(0).key()),
            JobTable.CONDITIONS.remove(new PartId("C102")),
            JobTable.READINGS.remove(first),
            JobTable.LIMITS.remove(NET),
            JobTable.HYPOTHESES.remove(first),
            JobTable.CHECKLIST.remove(CheckStep.RAILS),
            JobTable.LOG.remove(first),
            new JobEdit.ChangeIntake(IntakeRecord.EMPTY),
            new JobEdit.ChangeInstrument(Instrument.UNKNOWN));
    assertThat(removals).allSatisfy(edit -> assertThat(edit.label(job)).isNotBlank());
    assertThat(new JobEdit.Group("all away", removals).applyTo(job)).isEqualTo(JobSamples.blank());
  }

  @Test
  void aVoltage_isRefusedWithoutTheMetersResistance() {
    Amount volts = new Amount(Quantity.VOLTAGE, 1);
    MeasurementSetup unknown = MeasurementSetup.with(Instrument.UNKNOWN);
    assertThatThrownBy(() -> new Reading(new EntryId(1), NET, volts, unknown, "", JobSamples.NOON))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("input resistance");
    assertThatThrownBy(
            () ->
                new Reading(
                    new EntryId(1),
                    NET,
                    new Amount(Quantity.NUMBER, 1),
                    MeasurementSetup.with(Instrument.DIGITAL_METER),
                    "",
                    JobSamples.NOON))
        .hasMessageContaining("unit");
  }

  @Test
  void readings_areApartByRepairs_andKeepCounting() throws EditRefusedException {
    Job job = JobSamples.full(); // its repair is of the same moment as its reading
    Instant before = JobSamples.NOON.minusSeconds(60);
    Reading old =
        new Reading(
            job.nextReading(),
            NET,
            new Amount(Quantity.VOLTAGE, 9),
            MeasurementSetup.with(Instrument.DIGITAL_METER),
            "",
            before);
    Job both = JobTable.READINGS.put(old).applyTo(job);
    assertThat(old.id()).isEqualTo(new EntryId(2));
    assertThat(both.readingsAsFound()).containsExactly(old);
    assertThat(both.currentReadings()).hasSize(1).doesNotContain(old);
    assertThat(both.readingsAt(NET)).hasSize(2);
    assertThat(both.nextLog()).isEqualTo(new EntryId(2));
    assertThat(JobSamples.blank().nextHypothesis()).isEqualTo(new EntryId(1));
  }

  @Test
  void states_areReadAsPeopleWriteThem_andContradictionsRefused() {
    assertThat(PartState.of("resoldered")).isEqualTo(PartState.RESOLDERED);
    assertThat(PartState.of("Re-soldered")).isEqualTo(PartState.RESOLDERED);
    assertThat(PartState.of("damaged pad")).isEqualTo(PartState.DAMAGED);
    assertThatThrownBy(() -> PartState.of("mended")).hasMessageContaining("one of original");
    assertThatThrownBy(
            () ->
                new Condition(
                    new PartId("R1"),
                    EnumSet.of(PartState.ORIGINAL, PartState.REPLACED),
                    "",
                    "",
                    "",
                    List.of(),
                    "",
                    JobSamples.NOON))
        .hasMessageContaining("R1");
  }

  @Test
  void checklist_leadsThroughTheUsualOrder() throws EditRefusedException {
    Job job = JobSamples.blank();
    assertThat(job.nextStep()).contains(CheckStep.PHOTOGRAPH);
    for (CheckStep step : List.of(CheckStep.PHOTOGRAPH, CheckStep.DANGER, CheckStep.RAILS)) {
      job = JobTable.CHECKLIST.put(new CheckMark(step, "", "", JobSamples.NOON)).applyTo(job);
    }
    assertThat(job.nextStep()).contains(CheckStep.LOOK);
    assertThat(CheckStep.RAILS).isLessThan(CheckStep.SIGNAL);
  }
}
