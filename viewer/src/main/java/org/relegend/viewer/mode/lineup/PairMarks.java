package org.relegend.viewer.mode.lineup;

import java.util.ArrayList;
import java.util.List;
import org.relegend.map.BoardMap;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.Point;
import org.relegend.viewer.paint.PairOverlay;
import org.relegend.viewer.paint.PairOverlay.Look;

/** What is to be painted of the pairs, over each of the two photos. */
public record PairMarks(LineUpTool pairing, BoardMap seen) {
  public PairOverlay on(PictureId picture) {
    boolean left = is(pairing.left(), picture);
    if (!left && !is(pairing.right(), picture)) {
      return new PairOverlay(List.of());
    }
    List<PairOverlay.Spot> spots = new ArrayList<>();
    List<PicturePairs.Spot> pairs = pairing.spots();
    for (int i = 0; i < pairs.size(); i++) {
      spots.add(spot(i, left ? pairs.get(i).onA() : pairs.get(i).onB()));
    }
    pairing
        .half()
        .filter(half -> half.picture().equals(picture))
        .ifPresent(half -> spots.add(new PairOverlay.Spot(half.at(), next(), Look.HALF, true, 0)));
    NextPair wanted = new NextPair(pairing, seen);
    wanted
        .predicted()
        .filter(predicted -> predicted.picture().equals(picture))
        .ifPresent(
            predicted ->
                spots.add(
                    new PairOverlay.Spot(
                        predicted.at(), next(), Look.WANTED, false, predicted.radius())));
    if (left) {
      wanted
          .nextPlace()
          .ifPresent(at -> spots.add(new PairOverlay.Spot(at, next(), Look.WANTED, false, 0)));
    }
    return new PairOverlay(spots);
  }

  private static boolean is(java.util.Optional<Picture> shown, PictureId picture) {
    return shown.filter(known -> known.id().equals(picture)).isPresent();
  }

  private String next() {
    return Integer.toString(pairing.spots().size() + 1);
  }

  private PairOverlay.Spot spot(int pair, Point at) {
    Look look =
        switch (pairing.standing(pair)) {
          case UNKNOWN -> Look.OPEN;
          case GOOD -> Look.GOOD;
          case DOUBTFUL -> Look.DOUBTFUL;
          case WRONG -> Look.WRONG;
        };
    boolean chosen = pairing.chosen().filter(known -> known == pair).isPresent();
    return new PairOverlay.Spot(at, Integer.toString(pair + 1), look, chosen, 0);
  }
}
