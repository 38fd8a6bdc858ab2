package org.relegend.lineup;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.lineup.StoredLineUp.Lined;
import org.relegend.lineup.StoredLineUp.Result;
import org.relegend.map.BoardMap;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.Point;

/**
 * All line-ups of a map's pictures, computed from the pairs it keeps. A ring of line-ups that does
 * not come back to where it began is found, and nothing is carried over it.
 */
public final class LineUps {
  /** Points to a side of the grid at which a ring is tried. */
  private static final int GRID = 5;

  /** Fewest of these that both pictures must show for a ring to be judged. */
  private static final int FEWEST = 3;

  /** How sure a ring must be wrong before it is said to be. */
  private static final double SURE = 0.999;

  /** Share of the picture's diagonal below which a ring is as good as one can tell. */
  private static final double FINE = 0.003;

  /**
   * Line-ups that lead back to where they began, and don't.
   *
   * @param pictures in order along the ring; the last is lined up with the first
   * @param off how far off the point is after one round, in the middle of what was tried, in units
   *     of the first picture
   * @param allowed how far the stated errors would let it be
   */
  public record Ring(List<PictureId> pictures, double off, double allowed) {
    public Ring {
      pictures = List.copyOf(pictures);
    }
  }

  private final BoardMap map;
  private final Map<PicturePairs.Key, Result> results;
  private final Map<PictureId, Map<PictureId, LineUp>> steps = new HashMap<>();
  private final List<Ring> disagreeing = new ArrayList<>();

  private LineUps(BoardMap map, Map<PicturePairs.Key, Result> results) {
    this.map = map;
    this.results = results;
    for (Result result : results.values()) {
      if (result instanceof Lined lined) {
        link(lined.pairs().a(), lined.pairs().b(), lined.kept().lineUp());
      }
    }
    judgeRings();
  }

  /** Of the pairs that the map keeps; some milliseconds for each two pictures. */
  public static LineUps of(BoardMap map) {
    return of(map, Map.of(), map);
  }

  /** Of the map as it is now; what hasn't changed isn't computed again. */
  public LineUps after(BoardMap changed) {
    return changed.lineUps().equals(map.lineUps()) && changed.pictures().equals(map.pictures())
        ? this
        : of(changed, results, map);
  }

  private static LineUps of(BoardMap map, Map<PicturePairs.Key, Result> known, BoardMap knownFor) {
    Map<PicturePairs.Key, Result> results = new LinkedHashMap<>();
    for (PicturePairs pairs : map.lineUps()) {
      Result before = known.get(pairs.key());
      boolean same =
          before != null
              && before.pairs().equals(pairs)
              && map.picture(pairs.a()).equals(knownFor.picture(pairs.a()))
              && map.picture(pairs.b()).equals(knownFor.picture(pairs.b()));
      Optional<Result> result = same ? Optional.ofNullable(before) : StoredLineUp.of(map, pairs);
      result.ifPresent(found -> results.put(pairs.key(), found));
    }
    return new LineUps(map, results);
  }

  private void link(PictureId a, PictureId b, LineUp lineUp) {
    steps.computeIfAbsent(a, key -> new LinkedHashMap<>()).put(b, lineUp);
    steps.computeIfAbsent(b, key -> new LinkedHashMap<>()).put(a, lineUp.reversed());
  }

  private void unlink(PictureId a, PictureId b) {
    steps.getOrDefault(a, new HashMap<>()).remove(b);
    steps.getOrDefault(b, new HashMap<>()).remove(a);
  }

  /** What the pairs of each two pictures come to, in the map's order. */
  public List<Result> results() {
    return List.copyOf(results.values());
  }

  /** What the pairs of two pictures come to; none where there are no pairs. */
  public Optional<Result> result(PictureId one, PictureId other) {
    return Optional.ofNullable(results.get(PicturePairs.Key.of(one, other)));
  }

  /** Rings that don't come back to where they began; nothing is carried over them. */
  public List<Ring> disagreeing() {
    return List.copyOf(disagreeing);
  }

  /** The pictures that one is lined up with directly, and what leads there. */
  Map<PictureId, LineUp> from(PictureId picture) {
    return steps.getOrDefault(picture, Map.of());
  }

  /** Line-ups in a wrong ring and in no right one carry nothing: one can't tell which is wrong. */
  private void judgeRings() {
    Set<PicturePairs.Key> wrong = new HashSet<>();
    Set<PicturePairs.Key> right = new HashSet<>();
    for (List<PictureId> ring : rings()) {
      Optional<Ring> judged = judged(ring);
      if (judged.isPresent()) {
        boolean agrees = judged.get().off() <= judged.get().allowed();
        (agrees ? right : wrong).addAll(keys(ring));
        if (!agrees) {
          disagreeing.add(judged.get());
        }
      }
    }
    wrong.removeAll(right);
    wrong.forEach(key -> unlink(key.a(), key.b()));
  }

  private static List<PicturePairs.Key> keys(List<PictureId> ring) {
    List<PicturePairs.Key> keys = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      keys.add(PicturePairs.Key.of(ring.get(i), ring.get((i + 1) % ring.size())));
    }
    return keys;
  }

  /** For each line-up the shortest way round it, each ring once. */
  private List<List<PictureId>> rings() {
    Map<Set<PicturePairs.Key>, List<PictureId>> rings = new LinkedHashMap<>();
    for (Result result : results.values()) {
      if (result instanceof Lined) {
        around(result.pairs().a(), result.pairs().b())
            .ifPresent(ring -> rings.putIfAbsent(Set.copyOf(keys(ring)), ring));
      }
    }
    return List.copyOf(rings.values());
  }

  /** The fewest steps from one picture to the other that don't use their own line-up. */
  private Optional<List<PictureId>> around(PictureId start, PictureId end) {
    Map<PictureId, PictureId> cameFrom = new HashMap<>();
    Deque<PictureId> next = new ArrayDeque<>(List.of(start));
    while (!next.isEmpty() && !cameFrom.containsKey(end)) {
      PictureId here = next.remove();
      for (PictureId there : from(here).keySet()) {
        boolean own = here.equals(start) && there.equals(end);
        if (!own && !there.equals(start) && !cameFrom.containsKey(there)) {
          cameFrom.put(there, here);
          next.add(there);
        }
      }
    }
    if (!cameFrom.containsKey(end)) {
      return Optional.empty();
    }
    List<PictureId> way = new ArrayList<>(List.of(end));
    for (PictureId at = end; !at.equals(start); ) {
      at = java.util.Objects.requireNonNull(cameFrom.get(at));
      way.add(0, at);
    }
    return Optional.of(way);
  }

  /** How far off a ring is, by the middle of a grid of points; none where too few can be tried. */
  private Optional<Ring> judged(List<PictureId> pictures) {
    LineUp round = step(pictures.get(0), pictures.get(1));
    for (int i = 1; i < pictures.size(); i++) {
      round = round.then(step(pictures.get(i), pictures.get((i + 1) % pictures.size())));
    }
    Picture first = map.picture(pictures.get(0)).orElseThrow();
    List<double[]> tried = new ArrayList<>();
    for (int row = 0; row < GRID; row++) {
      for (int column = 0; column < GRID; column++) {
        double across = (column + 0.5) / GRID * first.width();
        double down = (row + 0.5) / GRID * first.height();
        tried(pictures, round, new Point(across, down)).ifPresent(tried::add);
      }
    }
    if (tried.size() < FEWEST) {
      return Optional.empty();
    }
    double fine = FINE * Math.hypot(first.width(), first.height());
    double off = middle(tried, 0);
    return Optional.of(new Ring(pictures, off, Math.max(fine, middle(tried, 1))));
  }

  /** How far off a point is after a round, and how far the stated error would let it be. */
  private Optional<double[]> tried(List<PictureId> ring, LineUp round, Point start) {
    return shown(ring, start)
        ? round
            .carry(start)
            .map(back -> new double[] {back.distance(start), round.uncertainty(start).radius(SURE)})
        : Optional.empty();
  }

  private LineUp step(PictureId from, PictureId to) {
    return java.util.Objects.requireNonNull(from(from).get(to));
  }

  /** Whether every picture on the way shows the point: beyond its edge a fit says little. */
  private boolean shown(List<PictureId> pictures, Point start) {
    Optional<Point> at = Optional.of(start);
    for (int i = 1; i < pictures.size(); i++) {
      LineUp step = step(pictures.get(i - 1), pictures.get(i));
      Picture there = map.picture(pictures.get(i)).orElseThrow();
      at = at.flatMap(step::carry).filter(there::contains);
    }
    return at.isPresent();
  }

  private static double middle(List<double[]> tried, int which) {
    double[] values = tried.stream().mapToDouble(pair -> pair[which]).toArray();
    Arrays.sort(values);
    return values[values.length / 2];
  }
}
