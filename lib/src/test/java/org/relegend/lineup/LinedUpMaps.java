package org.relegend.lineup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.map.Point;
import org.relegend.map.Side;

/** Photos of one made-up board, 4000 x 3000 pixels each, with known views and clicked pairs. */
public final class LinedUpMaps {
  private final Random random;
  private final Map<PictureId, Transform> views = new TreeMap<>();
  private BoardMap map = BoardMapSamples.divider();

  public LinedUpMaps(long seed) {
    random = new Random(seed);
    views.put(BoardMapSamples.TOP, Transform.IDENTITY);
  }

  /** Adds a photo taken from elsewhere; of the solder side it is mirrored. */
  public LinedUpMaps photo(String name, Side side) {
    PictureId id = new PictureId(name);
    Transform view = new Simulation(random.nextLong()).truth;
    Transform flip = new Transform(-1, 0, 4000, 0, 1, 0, 0, 0, 1);
    views.put(id, side == Side.SOLDER ? view.after(flip) : view);
    map =
        map.with(
            MapTables.PICTURES,
            map.pictures()
                .with(
                    new Photo(
                        id,
                        name,
                        "photos/" + name + ".jpg",
                        BoardMapSamples.MAIN,
                        side,
                        BoardTurn.UNKNOWN,
                        BoardMapSamples.DIGEST,
                        4000,
                        3000)));
    return this;
  }

  /** The true way from one photo to another. */
  public Transform truth(String from, String to) {
    return view(to).after(view(from).inverse());
  }

  private Transform view(String name) {
    Transform view = views.get(new PictureId(name));
    if (view == null) {
      throw new IllegalArgumentException("no photo " + name);
    }
    return view;
  }

  /** Lines two photos up by so many pairs in turns from the board's corners inwards. */
  public LinedUpMaps pairs(String from, String to, int count, double noise) {
    return pairs(from, to, count, noise, Transform.IDENTITY);
  }

  /** With something done to where the second photo's points are. */
  public LinedUpMaps pairs(String from, String to, int count, double noise, Transform bent) {
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double x = (i % 4 == 1 || i % 4 == 2 ? 2000 : 0) + between(300, 1700);
      double y = (i % 4 >= 2 ? 1500 : 0) + between(250, 1250);
      Point board = new Point(x, y);
      Point there = bent.apply(view(to).apply(board));
      spots.add(new Spot(clicked(view(from).apply(board), noise), clicked(there, noise)));
    }
    return put(from, to, Origin.CLICKED, spots);
  }

  public LinedUpMaps put(String from, String to, Origin found, List<Spot> spots) {
    PicturePairs pairs =
        new PicturePairs(
            new PictureId(from),
            new PictureId(to),
            found,
            spots,
            List.of(BoardMapSamples.says(Evidence.SEEN)));
    map = map.with(MapTables.LINE_UPS, map.lineUps().with(pairs));
    return this;
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private Point clicked(Point at, double noise) {
    return at.plus(noise * random.nextGaussian(), noise * random.nextGaussian());
  }

  public BoardMap map() {
    return map;
  }
}
