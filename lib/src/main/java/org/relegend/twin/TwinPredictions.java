package org.relegend.twin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.relegend.lineup.PointPair;
import org.relegend.lineup.Transform;
import org.relegend.map.BoardMap;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/**
 * Where the twins that aren't placed on a photo yet should lie.
 *
 * @param fits whether the layouts repeat, so that something could be predicted
 * @param text in words: how the layouts repeat, or that they don't
 */
public record TwinPredictions(List<Prediction> all, boolean fits, String text) {
  /** By what share of its distance from the placed twins a place may be off in a slanting photo. */
  private static final double SLANT = 0.03;

  /** So far the picture is looked at around a predicted place, in pixels. */
  private static final double FARTHEST = 90;

  public TwinPredictions {
    all = List.copyOf(all);
  }

  /**
   * One such place.
   *
   * @param part a part or a section
   * @param twin what it is predicted from
   * @param radius95 of the circle that should hold it 95 times in 100, in picture units: that of
   *     the fit, also where the picture moved the place, and an allowance for a photo that wasn't
   *     taken square on
   * @param correlation with what is seen around the twin, -1 to 1; 0 where the picture told nothing
   *     and the place is the fit's alone
   */
  public record Prediction(
      Subject part,
      Subject twin,
      PictureId picture,
      Point at,
      double radius95,
      double correlation) {}

  /** Predicts from the bodies of those twins that are placed on the photo. */
  public static TwinPredictions on(BoardMap map, PictureId photo, TwinResult twins) {
    return on(map, photo, twins, Optional.empty());
  }

  /**
   * As {@link #on(BoardMap, PictureId, TwinResult)}, and lets what the photo shows move the places.
   */
  public static TwinPredictions on(
      BoardMap map, PictureId photo, TwinResult twins, Optional<BrightnessImage> seen) {
    Map<Subject, Point> places = new TreeMap<>();
    for (Placement placement : map.placements()) {
      if (placement.picture().equals(photo) && placement.ordinal() == 1) {
        places.put(placement.subject(), placement.at());
      }
    }
    return from(photo, places, bodies(twins), seen);
  }

  private static List<ProposedTwin> bodies(TwinResult twins) {
    return twins.pairs().stream()
        .filter(pair -> pair.a() instanceof Subject.OfPart)
        .filter(pair -> pair.trust() >= ProposedTwin.LOW)
        .filter(pair -> pair.basis() != TwinBasis.ONE_OF_SEVERAL)
        .toList();
  }

  static TwinPredictions from(
      PictureId photo,
      Map<Subject, Point> places,
      List<ProposedTwin> pairs,
      Optional<BrightnessImage> seen) {
    List<PointPair> placed = new ArrayList<>();
    for (ProposedTwin pair : pairs) {
      Optional<Point> a = Optional.ofNullable(places.get(pair.a()));
      Optional<Point> b = Optional.ofNullable(places.get(pair.b()));
      if (a.isPresent() && b.isPresent()) {
        placed.add(new PointPair(a.get(), b.get()));
      }
    }
    ChannelFit.Result result = ChannelFit.of(placed);
    if (result.fit().isEmpty()) {
      return new TwinPredictions(List.of(), false, result.text());
    }
    ChannelFit fit = result.fit().get();
    List<Prediction> all = new ArrayList<>();
    for (ProposedTwin pair : pairs) {
      Optional<Point> a = Optional.ofNullable(places.get(pair.a()));
      Optional<Point> b = Optional.ofNullable(places.get(pair.b()));
      if (a.isPresent() && b.isEmpty()) {
        Transform turned = fit.forwards(a.get());
        ChannelFit.Place place = allowing(fit.forward(a.get()), fit.distance(a.get()));
        all.add(prediction(pair.b(), pair.a(), photo, place, moved(seen, a.get(), turned, place)));
      } else if (b.isPresent() && a.isEmpty()) {
        Transform turned = fit.backwards(b.get());
        ChannelFit.Place place = fit.backward(b.get());
        place = allowing(place, fit.distance(place.at()));
        all.add(prediction(pair.a(), pair.b(), photo, place, moved(seen, b.get(), turned, place)));
      }
    }
    return new TwinPredictions(all, true, result.text());
  }

  /** A similarity can't express that a slanting photo shows what is nearer larger. */
  private static ChannelFit.Place allowing(ChannelFit.Place place, double distance) {
    return new ChannelFit.Place(place.at(), Math.hypot(place.radius95(), SLANT * distance));
  }

  /** Where within the circle the picture looks as it does around the twin. */
  private static Optional<PhotoTemplate.Found> moved(
      Optional<BrightnessImage> seen, Point twin, Transform turned, ChannelFit.Place place) {
    double reach = Math.min(FARTHEST, place.radius95());
    return seen.flatMap(photo -> new PhotoTemplate(photo, twin, turned).near(place.at(), reach));
  }

  private static Prediction prediction(
      Subject part,
      Subject twin,
      PictureId photo,
      ChannelFit.Place place,
      Optional<PhotoTemplate.Found> found) {
    return new Prediction(
        part,
        twin,
        photo,
        found.map(PhotoTemplate.Found::at).orElse(place.at()),
        place.radius95(),
        found.map(PhotoTemplate.Found::correlation).orElse(0.0));
  }
}
