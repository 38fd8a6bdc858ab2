package org.relegend.viewer.paint;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.relegend.map.Attestation;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.ZoneId;

/** Marks and zones that tests and benchmarks make for themselves. */
public final class MarkSamples {
  private MarkSamples() {}

  /** Spread over a picture of some size: bodies with and without outline, pads, net labels. */
  public static List<Mark> spread(int count, double width, double height, long seed) {
    Random random = new Random(seed);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point at = new Point(width * random.nextDouble(), height * random.nextDouble());
      Mark.Emphasis emphasis =
          random.nextInt(20) > 0 ? Mark.Emphasis.PLAIN : any(random, Mark.Emphasis.values());
      Evidence evidence = any(random, Evidence.values());
      marks.add(
          switch (random.nextInt(4)) {
            case 0 -> mark(Subject.of(new PartId("R" + i)), at, List.of(), evidence, emphasis);
            case 1 -> {
              List<Point> outline = box(at, 10 + 40 * random.nextDouble(), 20);
              yield mark(Subject.of(new PartId("U" + i)), at, outline, evidence, emphasis);
            }
            case 2 -> mark(Subject.of(new NetId("N" + i)), at, List.of(), evidence, emphasis);
            default ->
                mark(Subject.of(PinRef.parse("C" + i + ".1")), at, List.of(), evidence, emphasis);
          });
    }
    return marks;
  }

  private static <T> T any(Random random, T[] values) {
    return List.of(values).get(random.nextInt(values.length));
  }

  public static Mark mark(
      Subject subject, Point at, List<Point> outline, Evidence evidence, Mark.Emphasis emphasis) {
    return new Mark(subject, at, outline, subject.toString(), evidence, emphasis);
  }

  static Mark pad(String pin, double x, double y, Mark.Emphasis emphasis) {
    return mark(Subject.of(PinRef.parse(pin)), new Point(x, y), List.of(), Evidence.SEEN, emphasis);
  }

  static Mark body(String part, double x, double y, double width, double height) {
    Point at = new Point(x, y);
    return mark(
        Subject.of(new PartId(part)),
        at,
        box(at, width / 2, height / 2),
        Evidence.SEEN,
        Mark.Emphasis.PLAIN);
  }

  static List<Point> box(Point middle, double w, double h) {
    return List.of(middle.plus(-w, -h), middle.plus(w, -h), middle.plus(w, h), middle.plus(-w, h));
  }

  public static HazardZone zone(String id, HazardZone.Kind kind, Point... outline) {
    return new HazardZone(
        new ZoneId(id),
        new PictureId("top"),
        kind,
        List.of(outline),
        "",
        List.of(new Attestation(Evidence.SEEN, "test", Instant.EPOCH, "")));
  }
}
