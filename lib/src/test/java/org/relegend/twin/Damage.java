package org.relegend.twin;

import static org.relegend.map.BoardMapSamples.says;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * One channel of a published circuit damaged at random: parts taken out, values changed, pins
 * moved. Then the twins are searched from one seed among the untouched parts.
 *
 * @param first hierarchical name of the sound channel, as "X1.X1.X2"
 * @param second of the one that is damaged
 */
record Damage(BoardMap map, String first, String second) {
  /**
   * What came of one run or of several.
   *
   * @param right told as they are, or in a group that holds the twin
   * @param grouped how many of the right ones are so by a group only
   */
  record Outcome(int truths, int right, int grouped, int wrong) {
    static final Outcome NOTHING = new Outcome(0, 0, 0, 0);

    Outcome plus(Outcome other) {
      return new Outcome(
          truths + other.truths, right + other.right, grouped + other.grouped, wrong + other.wrong);
    }

    double inGroups() {
      return 100.0 * grouped / truths;
    }

    double recall() {
      return 100.0 * right / truths;
    }

    double precision() {
      return 100.0 * right / Math.max(1, right + wrong);
    }
  }

  Outcome runs(double share, int count) {
    Outcome sum = Outcome.NOTHING;
    for (int i = 0; i < count; i++) {
      sum = sum.plus(run(share, new Random(1000L * i + Math.round(1000 * share))));
    }
    return sum;
  }

  Outcome run(double share, Random random) {
    Map<Subject, Subject> truth = truth();
    List<Subject> victims = new ArrayList<>(truth.values());
    Collections.shuffle(victims, random);
    int count = share == 0 ? 0 : Math.max(1, (int) Math.round(share * victims.size()));
    BoardMap damaged = map;
    Set<Subject> touched = new HashSet<>(victims.subList(0, count));
    for (Subject victim : victims.subList(0, count)) {
      damaged = damage(damaged, ((Subject.OfPart) victim).part(), random);
    }
    List<Subject> sound = new ArrayList<>(truth.keySet());
    sound.removeIf(a -> touched.contains(truth.get(a)) || name(a).endsWith("CLAMP"));
    Subject seed = sound.get(random.nextInt(sound.size()));
    Subject other = truth.getOrDefault(seed, seed);
    TwinResult twins = TwinSearch.of(Circuit.of(damaged)).from(List.of(new TwinSeed(seed, other)));
    return judge(twins, truth, damaged);
  }

  private Outcome judge(TwinResult twins, Map<Subject, Subject> truth, BoardMap damaged) {
    int truths = 0;
    int right = 0;
    int inGroups = 0;
    int wrong = 0;
    Map<Subject, ProposedTwin> found = new TreeMap<>();
    twins.pairs().forEach(pair -> found.put(pair.a(), pair));
    for (Map.Entry<Subject, Subject> pair : truth.entrySet()) {
      boolean there = damaged.part(((Subject.OfPart) pair.getValue()).part()).isPresent();
      truths += there ? 1 : 0;
      ProposedTwin result = found.get(pair.getKey());
      boolean open = result == null || result.basis() == TwinBasis.ONE_OF_SEVERAL;
      boolean held =
          result != null && result.b().equals(pair.getValue())
              || open && grouped(twins, pair.getKey(), pair.getValue());
      right += held ? 1 : 0;
      inGroups += held && open ? 1 : 0;
      wrong += result != null && !held ? 1 : 0;
    }
    return new Outcome(truths, right, inGroups, wrong);
  }

  private static boolean grouped(TwinResult twins, Subject first, Subject truth) {
    return twins.groups().stream()
        .anyMatch(group -> group.a().contains(first) && group.b().contains(truth));
  }

  String name(Subject part) {
    return map.part(((Subject.OfPart) part).part()).map(Part::note).orElse("");
  }

  /** By the parts' hierarchical names; sections of a part stand for it. */
  Map<Subject, Subject> truth() {
    Map<String, PartId> paths = new TreeMap<>();
    map.parts().forEach(part -> paths.put(part.note(), part.id()));
    Map<Subject, Subject> truth = new TreeMap<>();
    paths.forEach(
        (path, part) -> {
          PartId twin = paths.get(second + path.substring(Math.min(path.length(), first.length())));
          if (path.startsWith(first + ".") && twin != null) {
            truth.put(Subject.of(part), Subject.of(twin));
          }
        });
    return truth;
  }

  BoardMap damage(BoardMap before, PartId part, Random random) {
    try {
      return switch (random.nextInt(3)) {
        case 0 -> MapTables.PARTS.remove(part).applyTo(before);
        case 1 ->
            MapTables.PARTS.put(before.part(part).orElseThrow().withValue("7.77")).applyTo(before);
        default -> rewire(before, part, random);
      };
    } catch (EditRefusedException refused) {
      throw new IllegalStateException(refused);
    }
  }

  /** One pin onto another net of the channel. */
  private BoardMap rewire(BoardMap before, PartId part, Random random) throws EditRefusedException {
    List<Net> nets =
        before.nets().stream().filter(net -> net.id().text().startsWith(second + ".")).toList();
    Part damaged = before.part(part).orElseThrow();
    PinRef pin = damaged.ref(damaged.pins().get(random.nextInt(damaged.pins().size())));
    Net to = nets.get(random.nextInt(nets.size()));
    return to.has(pin)
        ? before
        : new NetEdits.MovePin(pin, to.id(), says(Evidence.SEEN)).applyTo(before);
  }
}
