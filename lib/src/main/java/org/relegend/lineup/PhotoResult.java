package org.relegend.lineup;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.relegend.map.Point;

/** What lining up two photos without clicks comes to. */
public sealed interface PhotoResult {

  /** How far it got, for whoever wants to know why. */
  Evidence evidence();

  /**
   * The same of two pictures that have other units than the pixels that were matched.
   *
   * @param from units of the first picture to its pixel
   * @param to units of the second picture to its pixel
   */
  PhotoResult scaled(double from, double to);

  /**
   * Figures of a search; those of steps that weren't reached are zero.
   *
   * @param features found on the picture that has fewer
   * @param candidates pairs of features that look alike
   * @param agreeing the most of them that agree on one view
   * @param patches matched when that view was refined
   * @param confirming those of them that lie on the board's plane
   * @param rival patches that confirm the next best view instead, at a coarser size
   * @param spread share of a picture that the confirming patches' hull takes up, of the picture
   *     where it is more
   * @param rms distance of the confirming patches from the plane, in full-size pixels of the second
   *     picture: root of the mean square
   * @param p95 the distance that 95 % of them keep within
   */
  record Evidence(
      int features,
      int candidates,
      int agreeing,
      int patches,
      int confirming,
      int rival,
      double spread,
      double rms,
      double p95) {
    private Evidence scaled(double to) {
      return new Evidence(
          features, candidates, agreeing, patches, confirming, rival, spread, rms * to, p95 * to);
    }
  }

  /**
   * Lined up.
   *
   * @param pairs the confirming patches, pairs of full-size points
   * @param matches these, and those a little off the board's plane, which tell the error
   */
  record Aligned(LineUp lineUp, List<PointPair> pairs, List<PointPair> matches, Evidence evidence)
      implements PhotoResult {
    /** Matches that a map keeps: enough for the fit and its error, few enough to be stored. */
    private static final int KEPT = 160;

    private static final long SEED = 20_260_103;

    public Aligned {
      requireNonNull(lineUp);
      requireNonNull(evidence);
      pairs = List.copyOf(pairs);
      matches = List.copyOf(matches);
    }

    @Override
    public PhotoResult scaled(double from, double to) {
      LineUp way =
          LineUp.exact(Transform.scale(1 / from))
              .then(lineUp)
              .then(LineUp.exact(Transform.scale(to)));
      return new Aligned(
          way, scaled(pairs, from, to), scaled(matches, from, to), evidence.scaled(to));
    }

    private static List<PointPair> scaled(List<PointPair> pairs, double from, double to) {
      return pairs.stream()
          .map(
              pair ->
                  PointPair.of(
                      pair.from().x() * from,
                      pair.from().y() * from,
                      pair.to().x() * to,
                      pair.to().y() * to))
          .toList();
    }

    /** A fair sample of the matches, to be kept; rounded to a hundredth of a pixel. */
    public List<PointPair> kept() {
      return sampled(matches);
    }

    static List<PointPair> sampled(List<PointPair> matches) {
      List<PointPair> drawn = new ArrayList<>(matches);
      Collections.shuffle(drawn, new Random(SEED));
      return drawn.stream().limit(KEPT).map(Aligned::rounded).toList();
    }

    private static PointPair rounded(PointPair pair) {
      return PointPair.of(
          rounded(pair.from().x()),
          rounded(pair.from().y()),
          rounded(pair.to().x()),
          rounded(pair.to().y()));
    }

    private static double rounded(double pixels) {
      return Math.rint(pixels * 100) / 100;
    }
  }

  /**
   * Not lined up, since that would be a guess.
   *
   * @param places on the first picture where clicked pairs would serve best, in full-size pixels
   */
  record Unaligned(Reason reason, List<Point> places, Evidence evidence) implements PhotoResult {
    public Unaligned {
      requireNonNull(reason);
      requireNonNull(evidence);
      places = List.copyOf(places);
    }

    @Override
    public PhotoResult scaled(double from, double to) {
      return new Unaligned(
          reason,
          places.stream().map(at -> new Point(at.x() * from, at.y() * from)).toList(),
          evidence.scaled(to));
    }

    /** For the user: why, and what to do. */
    public String message() {
      return reason.cause
          + " Click four pairs, far apart and near the corners, to line them up by hand.";
    }
  }

  /** Why two photos weren't lined up. */
  enum Reason {
    /** A picture shows too few distinct spots. */
    TOO_PLAIN("Too little can be made out on one of the pictures: it is blank, dark or blurred."),
    /** What looks alike agrees on no view. */
    NO_AGREEMENT(
        "Nothing on the two pictures agrees: they show different things or sides, or are too unlike."),
    /** What agrees would be seen mirrored, at a steep slant or in a far other size. */
    UNLIKELY(
        "What agrees on the two pictures would be mirrored, at a steep slant or in a far other size."),
    /** A closer look does not confirm what agreed. */
    UNCONFIRMED("A closer look does not confirm what first seemed to agree on the two pictures."),
    /** Two views are confirmed about as well, as where a board repeats a circuit. */
    AMBIGUOUS("The pictures agree in two different ways, as where a circuit is repeated."),
    /** What agrees is in a small part of both pictures. */
    TOO_NARROW("The pictures agree in a small part only, too little to line them up by.");

    private final String cause;

    Reason(String cause) {
      this.cause = cause;
    }
  }
}
