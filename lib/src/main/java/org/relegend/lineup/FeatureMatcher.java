package org.relegend.lineup;

import boofcv.abst.feature.associate.AssociateDescription;
import boofcv.abst.feature.detdesc.DetectDescribePoint;
import boofcv.abst.feature.detect.interest.ConfigFastHessian;
import boofcv.factory.feature.associate.ConfigAssociateGreedy;
import boofcv.factory.feature.associate.FactoryAssociation;
import boofcv.factory.feature.detdesc.FactoryDetectDescribe;
import boofcv.struct.feature.AssociatedIndex;
import boofcv.struct.feature.TupleDesc_F64;
import boofcv.struct.image.GrayF32;
import georegression.struct.point.Point2D_F64;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ddogleg.struct.DogArray;
import org.ddogleg.struct.FastAccess;
import org.relegend.map.Point;

/**
 * Spots that look alike on two pictures, whatever their turn and size: SURF features (Bay and
 * others 2008), matched where each is the other's best and clearly better than the next. Many are
 * wrong.
 */
final class FeatureMatcher {
  private static final int MOST_FEATURES = 2500;

  /** Best over second best distance between descriptions; above, a match is not clear. */
  private static final double CLEAR = 0.85;

  private static final Comparator<PointPair> ORDER =
      Comparator.<PointPair>comparingDouble(pair -> pair.from().x())
          .thenComparingDouble(pair -> pair.from().y())
          .thenComparingDouble(pair -> pair.to().x())
          .thenComparingDouble(pair -> pair.to().y());

  private FeatureMatcher() {}

  /** The features of a picture, light spots and dark ones apart; places in full-size pixels. */
  record Features(List<List<Point>> places, List<DogArray<TupleDesc_F64>> descriptions) {
    List<Point> all() {
      return places.stream().flatMap(List::stream).toList();
    }
  }

  static Features features(GreyImage.Scaled image) {
    ConfigFastHessian config = new ConfigFastHessian(1f, 2, MOST_FEATURES, 1, 9, 4, 4);
    config.maxFeaturesAll = MOST_FEATURES;
    DetectDescribePoint<GrayF32, TupleDesc_F64> surf =
        FactoryDetectDescribe.surfFast(config, null, null, GrayF32.class);
    surf.detect(image.pixels());
    Features features = new Features(new ArrayList<>(), new ArrayList<>());
    for (int set = 0; set < surf.getNumberOfSets(); set++) {
      features.places.add(new ArrayList<>());
      features.descriptions.add(new DogArray<>(surf::createDescription));
    }
    for (int i = 0; i < surf.getNumberOfFeatures(); i++) {
      Point2D_F64 centre = surf.getLocation(i);
      // BoofCV counts whole numbers as pixel middles
      Point place = new Point(centre.x + 0.5, centre.y + 0.5);
      features.places.get(surf.getSet(i)).add(image.toFull().apply(place));
      features.descriptions.get(surf.getSet(i)).grow().setTo(surf.getDescription(i));
    }
    return features;
  }

  /** Each place at most once; in an order that doesn't depend on the threads that worked. */
  static List<PointPair> pairs(Features from, Features to) {
    List<PointPair> pairs = new ArrayList<>();
    for (int set = 0; set < from.places.size(); set++) {
      ConfigAssociateGreedy config = new ConfigAssociateGreedy(true, -1);
      config.scoreRatioThreshold = CLEAR;
      AssociateDescription<TupleDesc_F64> matcher =
          FactoryAssociation.greedy(
              config, FactoryAssociation.scoreEuclidean(TupleDesc_F64.class, true));
      matcher.setSource(from.descriptions.get(set));
      matcher.setDestination(to.descriptions.get(set));
      matcher.associate();
      FastAccess<AssociatedIndex> matches = matcher.getMatches();
      for (int i = 0; i < matches.size(); i++) {
        AssociatedIndex match = matches.get(i);
        pairs.add(
            new PointPair(from.places.get(set).get(match.src), to.places.get(set).get(match.dst)));
      }
    }
    pairs.sort(ORDER);
    Set<Point> seen = new HashSet<>();
    pairs.removeIf(pair -> !seen.add(pair.from()));
    seen.clear();
    pairs.removeIf(pair -> !seen.add(pair.to()));
    return pairs;
  }
}
