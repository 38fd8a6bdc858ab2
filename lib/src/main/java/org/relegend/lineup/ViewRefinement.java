package org.relegend.lineup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.relegend.map.Point;

/**
 * Refines a rough view of one photo from another by matching patches, coarse to fine. Sizes are
 * those of photos of ten megapixels and more; smaller ones are worked on as they are.
 */
final class ViewRefinement {
  /** Fewer patches than this fix no plane worth trusting. */
  private static final int FEWEST = 12;

  /** Scale of the plane fit in working pixels: patches further off hardly pull it. */
  private static final double ON_PLANE = 1.6;

  /** Distance in pixels of the coarse level within which a patch bears a view out. */
  private static final double COARSE = 4;

  /**
   * @param cells patches to a row
   * @param radius of a patch, in pixels of that level
   * @param reach how far off the view may be before, in pixels of that level
   * @param most how often the view is improved at most
   */
  private record Level(int cells, int radius, int reach, int most) {}

  private static final List<Level> LEVELS =
      List.of(new Level(25, 7, 9, 3), new Level(40, 8, 8, 2), new Level(48, 10, 6, 4));

  private final GreyImage from;
  private final List<GreyImage.Scaled> froms;
  private final List<GreyImage.Scaled> tos;
  private final Map<Integer, PatchMatcher> matchers = new HashMap<>();
  private final Runnable proceed;

  /**
   * @param a the first photo at two megapixels, {@code b} the second
   * @param proceed called between steps; may throw to give up
   */
  ViewRefinement(GreyImage from, GreyImage.Scaled a, GreyImage.Scaled b, Runnable proceed) {
    this.from = from;
    this.proceed = proceed;
    froms = List.of(a.halved().halved(), a.halved(), a);
    tos = List.of(b.halved().halved(), b.halved(), b);
  }

  /**
   * A view between full-size pictures, and the patches that it was last fitted to.
   *
   * @param unit full-size pixels of the second picture to a pixel that was worked on
   */
  record View(Transform transform, List<PointPair> patches, double unit) {

    /** Patches within so many working pixels of the plane. */
    List<PointPair> within(double distance) {
      List<PointPair> within = new ArrayList<>();
      for (PointPair patch : patches) {
        boolean ahead = transform.denominator(patch.from()) > 0;
        if (ahead && transform.apply(patch.from()).distance(patch.to()) < distance * unit) {
          within.add(patch);
        }
      }
      return within;
    }
  }

  /** At up to half a megapixel: enough to tell a right view from a wrong one. */
  View roughly(Transform guess) {
    View coarse = refined(guess, 0);
    // what hardly any coarse patch confirms is no rival, whatever a closer look would give
    return coarse.within(COARSE).size() < FEWEST ? coarse : refined(coarse.transform, 1);
  }

  /** At two megapixels, from a view that is right already. */
  View finely(View rough) {
    return refined(rough.transform, 2);
  }

  private View refined(Transform guess, int index) {
    Level level = LEVELS.get(index);
    GreyImage.Scaled a = froms.get(index);
    PatchMatcher matcher =
        matchers.computeIfAbsent(
            index, at -> new PatchMatcher(a, tos.get(at), level.cells, level.radius));
    Point centre = from.extent().centre();
    double unit = a.toFull().scaleAt(centre) * guess.scaleAt(centre);
    Transform best = guess;
    List<PointPair> patches = List.of();
    for (int i = 0; i < level.most; i++) {
      proceed.run();
      patches = matcher.match(best, level.reach);
      if (patches.size() < FEWEST) {
        break;
      }
      Transform before = best;
      best = PlaneFit.of(patches, before, 1.4 * level.reach * unit, ON_PLANE * unit);
      if (movedLessThan(unit, before, best)) {
        break;
      }
    }
    return new View(best, patches, unit);
  }

  private boolean movedLessThan(double distance, Transform before, Transform after) {
    return from.extent().corners().stream()
        .filter(p -> before.denominator(p) > 0 && after.denominator(p) > 0)
        .allMatch(p -> before.apply(p).distance(after.apply(p)) < distance);
  }
}
