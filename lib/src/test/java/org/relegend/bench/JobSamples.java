package org.relegend.bench;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import org.relegend.lineup.PointPair;
import org.relegend.map.BoardId;
import org.relegend.map.BoardTurn;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;
import org.relegend.marking.Waveform;

/** Jobs for tests. */
public final class JobSamples {
  public static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
  public static final MapLink LINK = new MapLink("sample", "ab".repeat(32), "Sample", "../map");

  private JobSamples() {}

  public static Job blank() {
    return Job.empty("job-1", LINK);
  }

  /** A job with something in every field there is. */
  public static Job full() {
    Job job = blank();
    for (JobEdit edit : edits()) {
      try {
        job = edit.applyTo(job);
      } catch (org.relegend.map.EditRefusedException e) {
        throw new AssertionError(e);
      }
    }
    return job;
  }

  /** One edit of each kind that puts something there. */
  public static List<JobEdit> edits() {
    Instrument meter = new Instrument("bench meter", 10e6, 15e-12);
    MeasurementSetup setting =
        new MeasurementSetup("VN", meter, MeasurementSetup.Power.ON, true, "no signal");
    Photo photo =
        new Photo(
            new PictureId("own"),
            "own side",
            "photos/own.jpg",
            new BoardId("main"),
            Side.SOLDER,
            BoardTurn.UNKNOWN,
            "cd".repeat(32),
            4000,
            3000);
    PartId part = new PartId("C102");
    Subject net = Subject.parse("net:A_C1");
    EntryId first = new EntryId(1);
    return List.of(
        new JobEdit.ChangeIntake(
            new IntakeRecord(
                "faint\nand bad", "N. N.", "0042", "none", "repaired once", "me", NOON)),
        new JobEdit.ChangeInstrument(meter),
        JobTable.PHOTOS.put(
            new JobPhoto(
                photo,
                "solder-side",
                Origin.AUTOMATIC,
                List.of(PointPair.of(1, 2, 3, 4.5)),
                List.of(part))),
        JobTable.CONDITIONS.put(
            new Condition(
                part,
                EnumSet.of(PartState.REPLACED, PartState.SOCKETED),
                "10u 50V",
                "9112",
                "why?",
                List.of(new PictureId("own")),
                "me",
                NOON)),
        JobTable.READINGS.put(
            new Reading(
                first, net, new Amount(Quantity.VOLTAGE, -0.62, Waveform.DC), setting, "me", NOON)),
        JobTable.LIMITS.put(new NodeLimit(net, 0.02, 0.005)),
        JobTable.HYPOTHESES.put(
            new Hypothesis(
                first,
                List.of(part),
                "leaks",
                "5 V behind it",
                "lift a leg",
                Hypothesis.Result.CAUSE,
                "gone",
                "me",
                NOON)),
        JobTable.CHECKLIST.put(new CheckMark(CheckStep.RAILS, "in order", "me", NOON)),
        JobTable.LOG.put(
            new LogEntry(
                first, LogEntry.Kind.REPAIR, List.of(Subject.of(part)), "renewed", "me", NOON)),
        new JobEdit.LinkMap(LINK));
  }
}
