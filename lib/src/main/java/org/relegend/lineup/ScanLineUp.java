package org.relegend.lineup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.relegend.lineup.ScanResult.Aligned;
import org.relegend.lineup.ScanResult.Evidence;
import org.relegend.lineup.ScanResult.Reason;
import org.relegend.lineup.ScanResult.Unaligned;
import org.relegend.map.Point;

/**
 * Lines up a scan of a drawing with a page that isn't at hand, by the pins that were placed on that
 * page: wherever a pin is drawn there is a line. The scan may be turned, skewed, larger, smaller,
 * cut off and noisy. What isn't much better than chance, and much better than every other way for
 * the drawing to lie, is refused.
 */
public final class ScanLineUp {
  /** Fewest pins that tell a drawing from others, by experience. */
  static final int FEWEST_PINS = 20;

  private static final int WORKING_PIXELS = 2_000_000;

  /** Cells along the longer edge, in the first search. */
  private static final int CELLS = 400;

  /** Share of the longer edge that a pin may be off a line: a millimetre of a large sheet. */
  private static final double NEAR = 1 / 450.0;

  /** A drawn line's width, as a deviation: share of a sheet's diagonal. */
  private static final double LINE = 1 / 4000.0;

  private static final double LEAST_INK = 0.002;

  /**
   * How surprising the best way must be, were it chance: of a thousand million ways that are tried
   * the best reaches about 20.
   */
  private static final double SURE = 30;

  private static final double MET_SHARE = 0.6;
  private static final double INSIDE_SHARE = 0.4;

  /** Share of the best way's certainty that a rival may have. */
  private static final double RIVAL = 0.8;

  /** Share of the page's diagonal that two ways put a pin apart by, if different. */
  private static final double APART = 0.01;

  private static final int ROUNDS = 8;
  private static final int[] BLURS = {4, 2, 1};

  private final double[] pins;
  private final Extent page;
  private final GreyImage.Scaled scan;
  private final InkMap ink;
  private final int near;
  private final InkContrast lines;

  private ScanLineUp(GreyImage scan, Extent page, double[] pins) {
    this.pins = pins;
    this.page = page;
    this.scan = scan.scaled(WORKING_PIXELS);
    ink = InkMap.of(this.scan.pixels());
    int longest = Math.max(ink.width, ink.height);
    near = Math.max(1, (int) Math.rint(NEAR * longest));
    lines = new InkContrast(ink.near(near), ink.width, ink.height, longest / 20);
  }

  /**
   * @param page the size of the page that isn't at hand
   * @param pins where pins were placed on it
   */
  public static ScanResult of(GreyImage scan, Extent page, List<Point> pins) {
    if (pins.size() < FEWEST_PINS) {
      return new Unaligned(Reason.TOO_FEW_PINS, new Evidence(pins.size(), 0, 0, 0, 0));
    }
    double[] points = new double[2 * pins.size()];
    for (int i = 0; i < pins.size(); i++) {
      points[2 * i] = pins.get(i).x();
      points[2 * i + 1] = pins.get(i).y();
    }
    return new ScanLineUp(scan, page, points).run();
  }

  /** A way for the drawing to lie in the working scan. */
  private static final class Way {
    final double[] affine;
    final InkContrast.Tally tally;

    Way(double[] affine, InkContrast.Tally tally) {
      this.affine = affine;
      this.tally = tally;
    }
  }

  private ScanResult run() {
    if (ink.share() < LEAST_INK) {
      return new Unaligned(Reason.BLANK, new Evidence(pins.length / 2, 0, 0, 0, 0));
    }
    int cell = Math.max(1, (int) Math.ceil(Math.max(ink.width, ink.height) / (double) CELLS));
    ScanSearch search = new ScanSearch(ink, ink.inCells(cell));
    List<Way> ways = new ArrayList<>();
    for (ScanSearch.Lie lie : search.lies(pins, page)) {
      double[] rough = HillClimb.of(search.heat(), pins, page, lie.affine, 2);
      double[] working = new double[6];
      for (int i = 0; i < working.length; i++) {
        working[i] = rough[i] * cell;
      }
      ways.add(new Way(working, lines.of(pins, working)));
    }
    ways.sort(Comparator.comparingDouble(way -> -way.tally.sure()));
    return judged(ways);
  }

  private ScanResult judged(List<Way> rough) {
    List<Way> ways = new ArrayList<>();
    for (Way way : rough) {
      if (ways.size() < 3 && ways.stream().noneMatch(other -> isSame(way, other))) {
        ways.add(refined(way));
      }
    }
    ways.sort(Comparator.comparingDouble(way -> -way.tally.sure()));
    if (ways.isEmpty()) {
      return new Unaligned(Reason.NO_AGREEMENT, new Evidence(pins.length / 2, 0, 0, 0, 0));
    }
    Way best = ways.get(0);
    double rival =
        ways.stream()
            .filter(way -> !isSame(way, best))
            .mapToDouble(way -> way.tally.sure())
            .max()
            .orElse(0);
    InkContrast.Tally tally = best.tally;
    Evidence evidence =
        new Evidence(pins.length / 2, tally.inside(), (int) tally.sum(), tally.sure(), rival);
    if (tally.sure() < SURE
        || tally.sum() < MET_SHARE * tally.inside()
        || tally.inside() < INSIDE_SHARE * pins.length / 2
        || tally.sum() < FEWEST_PINS) {
      return new Unaligned(Reason.NO_AGREEMENT, evidence);
    }
    if (rival > RIVAL * tally.sure()) {
      return new Unaligned(Reason.AMBIGUOUS, evidence);
    }
    return aligned(best, evidence);
  }

  /** Each line pulls its pins across, none along itself; a few rounds, as feet move with them. */
  private ScanResult aligned(Way best, Evidence evidence) {
    double[] a = best.affine;
    Transform carry =
        scan.toFull().after(new Transform(a[0], a[1], a[2], a[3], a[4], a[5], 0, 0, 1));
    double usual = near * scan.toFull().m00();
    List<LineFit.Pull> pulls = pulls(carry);
    for (int i = 0; i < ROUNDS && pulls.size() >= FEWEST_PINS / 2; i++) {
      carry = LineFit.step(pulls, carry, usual / (1 + i));
      pulls = pulls(carry);
    }
    Transform found = carry;
    List<PointPair> matches = pulls.stream().map(pull -> match(pull, found)).toList();
    return ofMatches(
            matches, Extent.of(scan.toFull().m00() * ink.width, scan.toFull().m11() * ink.height))
        .<ScanResult>map(lineUp -> new Aligned(matches, lineUp, evidence))
        .orElseGet(() -> new Unaligned(Reason.NO_AGREEMENT, evidence));
  }

  /**
   * A pin and where it would be drawn. A line tells of one of two directions, so its distance
   * stands for both: it is stretched by the root of two.
   */
  private static PointPair match(LineFit.Pull pull, Transform carry) {
    double off = Math.sqrt(2) * pull.off(carry);
    Point at = carry.apply(pull.pair().from());
    return new PointPair(pull.pair().from(), at.plus(off * pull.acrossX(), off * pull.acrossY()));
  }

  /** Pins that lie by one line, with the foot on it at full size. */
  private List<LineFit.Pull> pulls(Transform carry) {
    Transform toWorking = scan.toFull().inverse();
    List<LineFit.Pull> pulls = new ArrayList<>();
    for (int i = 0; i < pins.length; i += 2) {
      Point pin = new Point(pins[i], pins[i + 1]);
      ink.foot(toWorking.apply(carry.apply(pin)), near)
          .ifPresent(
              foot ->
                  pulls.add(
                      new LineFit.Pull(
                          new PointPair(pin, scan.toFull().apply(foot.at())),
                          foot.acrossX(),
                          foot.acrossY())));
    }
    return pulls;
  }

  /**
   * The line-up that matches of a page make; its error is never less than what a drawn line is
   * wide.
   *
   * @param scan the size of the second picture
   */
  static Optional<LineUp> ofMatches(List<PointPair> matches, Extent scan) {
    return MatchedLineUp.of(matches)
        .map(lineUp -> new Drawn(lineUp, Uncertainty.round(LINE * scan.diagonal())));
  }

  /** Of lines, which have a width. */
  private record Drawn(LineUp fitted, Uncertainty line) implements LineUp {
    @Override
    public Transform transform() {
      return fitted.transform();
    }

    @Override
    public Uncertainty uncertainty(Point from) {
      return fitted.uncertainty(from).plus(line);
    }
  }

  private Way refined(Way way) {
    double[] affine = way.affine;
    for (int blur : BLURS) {
      InkContrast heat =
          new InkContrast(
              ink.blurred(blur), ink.width, ink.height, Math.max(ink.width, ink.height) / 20);
      affine = HillClimb.of(heat, pins, page, affine, blur);
    }
    return new Way(affine, lines.of(pins, affine));
  }

  private boolean isSame(Way one, Way other) {
    double scale =
        Math.sqrt(Math.abs(one.affine[0] * one.affine[4] - one.affine[1] * one.affine[3]));
    double apart = 0;
    for (int i = 0; i < pins.length; i += 2) {
      apart +=
          Math.hypot(x(one.affine, i) - x(other.affine, i), y(one.affine, i) - y(other.affine, i));
    }
    return apart / (pins.length / 2.0) < APART * page.diagonal() * scale;
  }

  private double x(double[] affine, int i) {
    return affine[0] * pins[i] + affine[1] * pins[i + 1] + affine[2];
  }

  private double y(double[] affine, int i) {
    return affine[3] * pins[i] + affine[4] * pins[i + 1] + affine[5];
  }
}
