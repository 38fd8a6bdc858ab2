package org.relegend.viewer.mode.pins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.Designator;
import org.relegend.map.MapTables;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Pin;
import org.relegend.map.Point;
import org.relegend.viewer.mode.place.PlaceTool;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SessionBench;

class PinsToolTest {
  /** Picture units per 0.1 inch in these tests. */
  private static final double PITCH = 40;

  private final SessionBench bench = new SessionBench(SessionBench.twoChannels());
  private final Session session = bench.session;

  private void takePinsOf(String name) {
    session.take(PinsTool.class);
    session.room(PlaceTool.class).type(name);
  }

  @Test
  void fourteenPins_takeTwoClicks() {
    takePinsOf("U101");
    bench.click(TOP, 1000, 1000);
    bench.click(TOP, 1000 + 3 * PITCH, 1000);

    assertThat(bench.clicks).isEqualTo(2);
    assertThat(bench.keys).isZero();
    assertThat(session.map().placements()).hasSize(15);
    assertThat(session.document().undoLabel()).contains("Place U101 with 14 pins");
  }

  /** DIP rows lie 0.3 inch apart and pins 0.1 inch: JEDEC MS-001, as told second hand. */
  @Test
  void componentSide_pinsCountCounterClockwise() {
    takePinsOf("U101");
    bench.click(TOP, 1000, 1000);
    bench.click(TOP, 1000 + 3 * PITCH, 1000);

    assertAt(TOP, "U101.7", 1000, 1000 + 6 * PITCH);
    assertAt(TOP, "U101.8", 1000 + 3 * PITCH, 1000 + 6 * PITCH);
    assertAt(TOP, "U101", 1000 + 1.5 * PITCH, 1000 + 3 * PITCH);
  }

  @Test
  void solderSide_pinsCountClockwise() {
    takePinsOf("U101");
    bench.click(SessionBench.SOLDER, 1000, 1000);
    bench.click(SessionBench.SOLDER, 1000 - 3 * PITCH, 1000);

    assertAt(SessionBench.SOLDER, "U101.7", 1000, 1000 + 6 * PITCH);
    assertAt(SessionBench.SOLDER, "U101.8", 1000 - 3 * PITCH, 1000 + 6 * PITCH);
  }

  @Test
  void unknownPart_getsThePinsOfTheTypedPackage() {
    takePinsOf("U7 DIP-8");
    bench.click(TOP, 1000, 1000);
    bench.click(TOP, 1000 + 3 * PITCH, 1000);
    assertThat(session.map().part(new PartId("U7")).orElseThrow().pins()).hasSize(8);
    assertThat(session.map().part(new PartId("U7")).orElseThrow().casing()).isEqualTo("DIP-8");
  }

  @Test
  void unknownPartWithoutPackage_asksForOne_andChangesNothing() {
    BoardMap before = session.map();
    takePinsOf("U7");
    bench.click(TOP, 1000, 1000);
    bench.click(TOP, 1100, 1000);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_PACKAGE);
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void packageOfAnotherPinCount_isRefused() {
    takePinsOf("U101 DIP-8");
    bench.click(TOP, 1000, 1000);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_PACKAGE);
  }

  /** Six of eight pins traced so far: what a smaller package would make of them is wrong. */
  @Test
  void numberedPinsThatGoBeyondThePackage_areRefused() {
    putPins("U8", "1", "2", "3", "5", "6", "7");
    takePinsOf("U8");
    bench.click(TOP, 1000, 1000);
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NO_PACKAGE);
  }

  @Test
  void pinsTracedInAnyOrder_lieWhereTheirNumbersAre() {
    putPins("U8", "5", "8", "1", "2", "4", "3", "7", "6");
    takePinsOf("U8");
    bench.click(TOP, 1000, 1000);
    bench.click(TOP, 1000 + 3 * PITCH, 1000);
    assertAt(TOP, "U8.1", 1000, 1000);
    assertAt(TOP, "U8.4", 1000, 1000 + 3 * PITCH);
    assertAt(TOP, "U8.5", 1000 + 3 * PITCH, 1000 + 3 * PITCH);
    assertAt(TOP, "U8.8", 1000 + 3 * PITCH, 1000);
  }

  private void putPins(String name, String... numbers) {
    List<Pin> pins = Stream.of(numbers).map(number -> new Pin(number, "")).toList();
    Part part = Part.named(new PartId(name), new Designator(name), new BoardId("main"));
    session.document().apply(MapTables.PARTS.put(part.withPins(pins, List.of())));
  }

  @Test
  void sameClickTwice_waitsForAnotherPlace() {
    takePinsOf("U101");
    bench.click(TOP, 1000, 1000);
    bench.click(TOP, 1000, 1000);
    assertThat(session.map().placements()).isEmpty();
    assertThat(session.room(PinsTool.class).first(TOP)).contains(new Point(1000, 1000));
  }

  @Test
  void escape_dropsTheFirstPin() {
    takePinsOf("U101");
    bench.click(TOP, 1000, 1000);
    session.back();
    assertThat(session.room(PinsTool.class).first(TOP)).isEmpty();
  }

  @Test
  void transistor_liesInOneRow() {
    takePinsOf("Q101");
    bench.click(TOP, 1000, 1000);
    bench.click(TOP, 1000, 1000 + 2 * PITCH);
    assertAt(TOP, "Q101.B", 1000, 1000 + PITCH);
  }

  @Test
  void onAPage_pinsArePlacedOneByOne() {
    takePinsOf("C102");
    bench.click(PAGE, 100, 100);
    assertThat(session.room(PinsTool.class).nextOnPage().orElseThrow().number()).isEqualTo("-");
    bench.click(PAGE, 120, 100);
    assertAt(PAGE, "C102.+", 100, 100);
    assertAt(PAGE, "C102.-", 120, 100);
    assertThat(session.room(PlaceTool.class).text()).isNotEqualTo("C102");
  }

  private void assertAt(PictureId picture, String subject, double x, double y) {
    Point at = bench.place(picture, subject).at();
    assertThat(at.x()).isCloseTo(x, within(1e-6));
    assertThat(at.y()).isCloseTo(y, within(1e-6));
  }
}
