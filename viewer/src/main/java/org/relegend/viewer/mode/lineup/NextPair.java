package org.relegend.viewer.mode.lineup;

import java.util.List;
import java.util.Optional;
import org.relegend.lineup.Extent;
import org.relegend.lineup.LineUp;
import org.relegend.lineup.PairSuggestions;
import org.relegend.map.BoardMap;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.map.Placement;
import org.relegend.map.Point;

/**
 * Where the next click would serve a line-up in the making.
 *
 * @param seen the map with all that is carried over
 */
record NextPair(LineUpTool tool, BoardMap seen) {
  /** Share of a picture that places must take up to tell where the board is. */
  private static final double LEAST_SHARE = 0.2;

  /** Where the other half of the pair should be, with the circle it should lie in. */
  Optional<Predicted> predicted() {
    return tool.half().flatMap(known -> tool.lineUp().flatMap(lineUp -> predicted(known, lineUp)));
  }

  /** A place that the line-up so far tells. */
  record Predicted(PictureId picture, Point at, double radius) {}

  private Optional<Predicted> predicted(LineUpTool.Half known, LineUp lineUp) {
    boolean onLeft = tool.isLeft(known.picture());
    LineUp way = onLeft ? lineUp : lineUp.reversed();
    PictureId there = (onLeft ? tool.right() : tool.left()).orElseThrow().id();
    return way.carry(known.at()).map(at -> new Predicted(there, at, way.radius95(known.at())));
  }

  /** Where on the left photo the next pair would serve best. */
  Optional<Point> nextPlace() {
    if (tool.half().isPresent()
        || tool.kept().filter(pairs -> pairs.origin() == Origin.AUTOMATIC).isPresent()) {
      return Optional.empty();
    }
    return tool.left()
        .map(
            picture -> {
              Extent extent = board(picture);
              int count = tool.spots().size();
              return count < 4
                  ? PairSuggestions.first(extent).get(count)
                  : tool.lineUp()
                      .map(lineUp -> PairSuggestions.next(lineUp, extent))
                      .orElseGet(extent::centre);
            });
  }

  /** What is placed on it tells where the board is; else it is taken to fill the picture. */
  private Extent board(Picture picture) {
    Extent whole = Extent.of(picture.width(), picture.height());
    List<Point> placed =
        seen.placements().stream()
            .filter(placement -> placement.picture().equals(picture.id()))
            .map(Placement::at)
            .toList();
    return placed.isEmpty() || Extent.around(placed).area() < LEAST_SHARE * whole.area()
        ? whole
        : Extent.around(placed);
  }
}
