package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.NOON;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.store.MapFormat;

/**
 * What two people do to different things, merged line by line as version control does, gives the
 * same map as our own merge.
 */
class LineMergeTest {
  private static final int SEEDS = 150;

  @TempDir private Path temp;

  private static BoardMap base(long seed) {
    BoardMap map = BoardMapSamples.generated(seed, 16, 3);
    Attestation first = new Attestation(Evidence.GUESSED, "Kim", NOON);
    for (int i = 0; i < map.parts().size(); i++) {
      Subject part = Subject.of(map.parts().at(i).id());
      map = placed(map, i % 2 == 0 ? TOP : PAGE, part, new Point(10 * i, 5), first);
    }
    return map;
  }

  private static BoardMap placed(
      BoardMap map, PictureId picture, Subject subject, Point at, Attestation says) {
    return map.with(
        MapTables.PLACEMENTS, map.placements().with(new Placement(picture, subject, at, says)));
  }

  /** One person's work on every other part, net and placement, beginning with this one. */
  private static BoardMap worked(BoardMap base, int first, String author, Random random) {
    Attestation says = new Attestation(Evidence.SEEN, author, NOON.plusSeconds(60 + first));
    BoardMap map = base;
    for (int i = first; i < base.parts().size(); i += 2) {
      Part part = base.parts().at(i);
      map =
          switch (random.nextInt(3)) {
            case 0 ->
                map.with(
                    MapTables.PARTS, map.parts().with(part.withValue(random.nextInt(90) + "k")));
            case 1 ->
                map.with(MapTables.PARTS, map.parts().with(part.withNote("seen by " + author)));
            default -> map;
          };
    }
    for (int i = first; i < base.placements().size(); i += 2) {
      Placement placement = base.placements().at(i);
      map =
          switch (random.nextInt(3)) {
            case 0 ->
                map.with(MapTables.PLACEMENTS, map.placements().with(placement.confirmedBy(says)));
            case 1 ->
                map.with(
                    MapTables.PLACEMENTS,
                    map.placements()
                        .with(placement.movedTo(new Point(random.nextInt(900), 77), says)));
            default -> map;
          };
    }
    for (int i = first; i < base.nets().size(); i += 2) {
      Net net = base.nets().at(i);
      if (!net.members().isEmpty() && random.nextBoolean()) {
        Net.Member member = net.members().get(0);
        map =
            map.with(
                MapTables.NETS,
                map.nets()
                    .with(
                        net.withMember(
                            new Net.Member(
                                member.pin(), List.of(member.evidence().get(0), says)))));
      }
    }
    return map;
  }

  private static String text(BoardMap map) {
    return new String(MapFormat.write(map), StandardCharsets.UTF_8);
  }

  @Test
  void workOnDifferentThings_mergesLineByLine_toTheSameMap() throws Exception {
    int changed = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      Random random = new Random(seed);
      BoardMap base = base(seed);
      BoardMap mine = worked(base, 0, "Ada", random);
      BoardMap theirs = worked(base, 1, "Ben", random);
      Optional<String> merged = Diff3.merged(text(base), text(mine), text(theirs));
      assertThat(merged).as("seed " + seed + " merges").isPresent();
      MergeResult ours = Merge.of(base, mine, theirs);
      assertThat(ours.clashes()).isEmpty();
      assertThat(merged.get()).as("seed " + seed).isEqualTo(text(ours.map()));
      changed += mine.equals(base) || theirs.equals(base) ? 0 : 1;
    }
    assertThat(changed).isGreaterThan(SEEDS * 9 / 10);
  }

  @Test
  void theSameThing_changedInTwoWays_doesNotMergeSilently() {
    BoardMap base = base(1);
    Part part = base.parts().at(3);
    BoardMap mine = base.with(MapTables.PARTS, base.parts().with(part.withValue("1k")));
    BoardMap theirs = base.with(MapTables.PARTS, base.parts().with(part.withValue("2k")));
    assertThat(Diff3.merged(text(base), text(mine), text(theirs))).isEmpty();
    assertThat(Diff3.merged(text(base), text(mine), text(base))).contains(text(mine));
  }

  /** Where git is at hand it must come to the same; elsewhere our own line merge has to do. */
  @Test
  void git_comesToTheSame() throws Exception {
    Random random = new Random(7);
    BoardMap base = base(7);
    BoardMap mine = worked(base, 0, "Ada", random);
    BoardMap theirs = worked(base, 1, "Ben", random);
    Path a = Files.writeString(temp.resolve("a"), text(mine));
    Path b = Files.writeString(temp.resolve("b"), text(base));
    Path c = Files.writeString(temp.resolve("c"), text(theirs));
    Path out = temp.resolve("out");
    Process git;
    try {
      git =
          new ProcessBuilder("git", "merge-file", "-p", a.toString(), b.toString(), c.toString())
              .redirectOutput(out.toFile())
              .start();
    } catch (java.io.IOException missing) {
      Assumptions.abort("there is no git here to compare with");
      return;
    }
    assertThat(git.waitFor()).isZero();
    assertThat(out).hasContent(text(Merge.of(base, mine, theirs).map()));
  }
}
