package org.relegend.lineup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.relegend.map.PictureId;
import org.relegend.map.Point;

/**
 * Chains of line-ups from one point of a picture to all others: to each the one with the least
 * error. Errors are compared in units of the first picture, where they only grow along a chain, so
 * that the shortest-path search of Dijkstra (1959) finds the least.
 */
final class LineUpChains {
  private final LineUps lineUps;

  LineUpChains(LineUps lineUps) {
    this.lineUps = lineUps;
  }

  /**
   * Where the point is on one picture that was reached.
   *
   * @param chain from the first picture to this one
   * @param cost sum of the variances of x and y, in squared units of the first picture
   */
  record Reached(List<PictureId> via, LineUp chain, Point at, Uncertainty error, double cost) {
    PictureId picture() {
      return via.get(via.size() - 1);
    }
  }

  /** All pictures that the point can be carried to, whether or not it lies on them. */
  Map<PictureId, Reached> from(PictureId picture, Point at) {
    PriorityQueue<Reached> open =
        new PriorityQueue<>(
            Comparator.comparingDouble(Reached::cost).thenComparing(Reached::picture));
    Map<PictureId, Reached> reached = new HashMap<>();
    Set<PictureId> closed = new HashSet<>(Set.of(picture));
    spread(
        new Reached(List.of(picture), LineUp.exact(Transform.IDENTITY), at, Uncertainty.NONE, 0),
        closed,
        open);
    while (!open.isEmpty()) {
      Reached nearest = open.remove();
      if (closed.add(nearest.picture())) {
        reached.put(nearest.picture(), nearest);
        spread(nearest, closed, open);
      }
    }
    return reached;
  }

  private void spread(Reached here, Set<PictureId> closed, PriorityQueue<Reached> open) {
    lineUps
        .from(here.picture())
        .forEach(
            (there, step) -> {
              if (!closed.contains(there)) {
                further(here, there, step).ifPresent(open::add);
              }
            });
  }

  private static Optional<Reached> further(Reached here, PictureId there, LineUp step) {
    return step.carry(here.at)
        .map(
            at -> {
              Uncertainty error =
                  here.error
                      .through(step.transform().jacobian(here.at))
                      .plus(step.uncertainty(here.at));
              LineUp chain = here.via.size() == 1 ? step : here.chain.then(step);
              Uncertainty atFirst = error.through(chain.transform().inverse().jacobian(at));
              List<PictureId> via = new ArrayList<>(here.via);
              via.add(there);
              return new Reached(via, chain, at, error, atFirst.xx() + atFirst.yy());
            });
  }
}
