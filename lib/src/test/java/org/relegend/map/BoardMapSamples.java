package org.relegend.map;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Maps for tests, made from a seed or by hand; shared with the tests of all packages. */
public final class BoardMapSamples {
  public static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
  public static final BoardId MAIN = new BoardId("main");
  public static final PictureId PAGE = new PictureId("page-1");
  public static final PictureId TOP = new PictureId("component");
  public static final String DIGEST = "0".repeat(64);

  private BoardMapSamples() {}

  public static Attestation says(Evidence evidence) {
    return new Attestation(evidence, "test", NOON);
  }

  /** A map with one board, one page of 800 x 600 points and one photo of 4000 x 3000 pixels. */
  public static BoardMap blank() {
    BoardMap map = BoardMap.empty("sample", MapInfo.titled("Sample"));
    return map.with(MapTables.BOARDS, map.boards().with(Board.named(MAIN)))
        .with(
            MapTables.PICTURES,
            map.pictures()
                .with(new Page(PAGE, "Page 1", "pages/page-1.pdf", 1, DIGEST, 800, 600))
                .with(
                    new Photo(
                        TOP,
                        "Component side",
                        "photos/component.jpg",
                        MAIN,
                        Side.COMPONENT,
                        BoardTurn.UNKNOWN,
                        DIGEST,
                        4000,
                        3000)));
  }

  public static Part twoPin(String designator, String kind, String value) {
    return part(designator, kind, value, "1", "2");
  }

  public static Part part(String designator, String kind, String value, String... pins) {
    List<Pin> list = new ArrayList<>();
    for (String pin : pins) {
      list.add(new Pin(pin, ""));
    }
    return Part.named(new PartId(designator), new Designator(designator), MAIN)
        .withKind(kind)
        .withValue(value)
        .withPins(list, List.of());
  }

  public static Net net(String name, String... pins) {
    List<Net.Member> members = new ArrayList<>();
    for (String pin : pins) {
      members.add(new Net.Member(PinRef.parse(pin), List.of(says(Evidence.INFERRED))));
    }
    return Net.named(new NetId(name)).withMembers(members);
  }

  public static BoardMap with(BoardMap map, Part... parts) {
    return map.with(MapTables.PARTS, map.parts().withAll(List.of(parts)));
  }

  public static BoardMap with(BoardMap map, Net... nets) {
    return map.with(MapTables.NETS, map.nets().withAll(List.of(nets)));
  }

  /** A divider: R1 and R2 between VP and 0V, joined at MID. */
  public static BoardMap divider() {
    BoardMap parts =
        with(blank(), twoPin("R1", "resistor", "4k7"), twoPin("R2", "resistor", "10k"));
    return with(parts, net("VP", "R1.1"), net("MID", "R1.2", "R2.1"), net("0V", "R2.2"));
  }

  /** Two-pin parts on random nets, some placed, some with twins; the same for one seed. */
  public static BoardMap random(long seed) {
    Random random = new Random(seed);
    int count = 5 + random.nextInt(40);
    return generated(seed, count, 2);
  }

  /** {@code parts} parts of {@code pins} pins each, on about 0.8 times as many nets. */
  public static BoardMap generated(long seed, int parts, int pins) {
    Random random = new Random(seed);
    String[] kinds = {"resistor", "cap", "diode", "npn", "dual-opamp"};
    List<Part> made = new ArrayList<>(parts);
    int netCount = Math.max(1, parts * 4 / 5);
    List<List<Net.Member>> joined = new ArrayList<>();
    for (int i = 0; i < netCount; i++) {
      joined.add(new ArrayList<>());
    }
    List<Placement> placements = new ArrayList<>();
    for (int i = 1; i <= parts; i++) {
      String[] numbers = new String[pins];
      for (int p = 0; p < pins; p++) {
        numbers[p] = Integer.toString(p + 1);
      }
      Part part =
          part("R" + i, kinds[random.nextInt(kinds.length)], random.nextInt(999) + "k", numbers);
      made.add(part);
      for (Pin pin : part.pins()) {
        joined
            .get(random.nextInt(netCount))
            .add(new Net.Member(part.ref(pin), List.of(says(Evidence.SEEN))));
      }
      if (random.nextBoolean()) {
        Point at = new Point(random.nextInt(4000), random.nextInt(3000));
        placements.add(new Placement(TOP, Subject.of(part.id()), at, says(Evidence.MATCHED)));
      }
    }
    List<Net> nets = new ArrayList<>();
    for (int i = 0; i < netCount; i++) {
      nets.add(Net.named(new NetId("N" + (i + 1))).withMembers(joined.get(i)));
    }
    BoardMap map = blank();
    return map.with(MapTables.PARTS, Table.of(made))
        .with(MapTables.NETS, Table.of(nets))
        .with(MapTables.PLACEMENTS, Table.of(placements));
  }
}
