package org.relegend.demo.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.demo.photo.Faults.Fault;
import org.relegend.demo.truth.Place;
import org.relegend.demo.truth.Truth;
import org.relegend.lineup.GreyImage;
import org.relegend.lineup.PhotoLineUp;
import org.relegend.lineup.PhotoResult;
import org.relegend.lineup.Transform;
import org.relegend.map.Point;

/** Where automatic line-up stops: photos worse than the demo's, and photos of other boards. */
class LineUpIT {
  /** Of the full photos' width; two megapixels are all that the line-up works at. */
  private static final double SIZE = 0.5;

  private static final GreyImage FIRST = grey(Photographer.take(shot("component")));

  private static Shot shot(String picture) {
    Shot shot = Shots.of(picture);
    return shot.with(shot.camera().scaled(SIZE));
  }

  private static GreyImage grey(Photo photo) {
    return GreyImage.of(photo.image());
  }

  static Stream<Shot> photosOfNothingAlike() {
    Shot shot = shot("other-component");
    return Stream.concat(
        Stream.of(Faults.blank(shot), Faults.blank(shot).withSeed(7)),
        Stream.iterate(1L, seed -> seed + 1).limit(8).map(seed -> Faults.wrongBoard(shot, seed)));
  }

  /** Ten of them: none may be lined up. */
  @ParameterizedTest
  @MethodSource("photosOfNothingAlike")
  void anotherBoard_orNone_isNeverLinedUp(Shot shot) {
    PhotoResult result = PhotoLineUp.of(FIRST, grey(Photographer.take(shot)));
    assertThat(result).as(result.evidence().toString()).isInstanceOf(PhotoResult.Unaligned.class);
  }

  static List<Fault> faults() {
    return Faults.ofGoodBoards();
  }

  /** A faulty photo of the right board may be refused, but a line-up that is given is right. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("faults")
  void faultyPhoto_isLinedUpWithinItsCircle_orRefused(Fault fault) {
    Shot shot = fault.change().apply(shot("other-component"));
    PhotoResult result = PhotoLineUp.of(FIRST, grey(Photographer.take(shot)));
    if (result instanceof PhotoResult.Aligned aligned) {
      double[] errors = errors(aligned, shot);
      double diagonal = Math.hypot(FIRST.width(), FIRST.height());
      System.out.printf(
          Locale.ROOT,
          "%-32s lined up, median %.2f %%, 95 %% within %.2f %% of the diagonal%n",
          fault,
          100 * errors[errors.length / 2] / diagonal,
          100 * errors[errors.length * 95 / 100] / diagonal);
      assertThat(errors[errors.length / 2]).isLessThan(0.005 * diagonal);
    } else {
      System.out.printf("%-32s refused: pairs take over%n", fault);
    }
  }

  private static double[] errors(PhotoResult.Aligned aligned, Shot to) {
    Transform carried = aligned.lineUp().transform();
    Map<String, Point> there = pads("other-component", to);
    return pads("component", shot("component")).entrySet().stream()
        .filter(pad -> there.containsKey(pad.getKey()))
        .mapToDouble(pad -> carried.apply(pad.getValue()).distance(there.get(pad.getKey())))
        .sorted()
        .toArray();
  }

  private static Map<String, Point> pads(String picture, Shot shot) {
    Map<String, Point> pads = new HashMap<>();
    for (Place place : Truth.of(picture, shot)) {
      if (place.kind() == Place.Kind.PAD) {
        pads.put(place.subject(), new Point(place.at().x(), place.at().y()));
      }
    }
    return pads;
  }
}
