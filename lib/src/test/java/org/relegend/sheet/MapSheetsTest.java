package org.relegend.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.NOON;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.relegend.bench.rule.TwinIndex;
import org.relegend.circuit.Circuit;
import org.relegend.hazard.Caution;
import org.relegend.hazard.Cautions;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.SupplySketch;
import org.relegend.hazard.VoltageLimits;
import org.relegend.lineup.LinedUpMaps;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.ZoneId;
import org.relegend.scan.Progress;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/** Sheets of the demo map and of small ones, read back with PDFBox. */
class MapSheetsTest {
  private static final List<NetId> NODES =
      List.of(new NetId("A_ATT"), new NetId("A_MIR"), new NetId("A_DOUT"), new NetId("MAINS_L_SW"));

  private static final List<NetId> RAW = List.of(new NetId("RAW_P"));

  private static byte[] demo = {};
  private static byte[] letter = {};

  @BeforeAll
  static void printTheDemo() throws StoreException {
    demo = demo(PaperSize.A4, NODES);
    letter = demo(PaperSize.LETTER, RAW);
  }

  private static byte[] demo(PaperSize paper, List<NetId> nodes) throws StoreException {
    MapFolder folder = MapFolder.openReadOnly(Sheets.DEMO);
    FinishedSheets printed =
        new MapSheets(Circuit.of(folder.map()), folder::fileOf)
            .print(paper, nodes, NOON, Progress.UNWATCHED);
    assertThat(printed.troubles()).isEmpty();
    return printed.pdf();
  }

  private static FinishedSheets of(BoardMap map) {
    return new MapSheets(Circuit.of(map), picture -> Path.of("/nowhere", picture.file()))
        .print(PaperSize.A4, MapSheets.allNodes(map), NOON, Progress.UNWATCHED);
  }

  /** A zone drawn on one photo alone is printed on the other as soon as the two are lined up. */
  @Test
  void zoneIsPrinted_onEveryPhotoThatIsLinedUpWithItsOwn() throws IOException {
    LinedUpMaps board = new LinedUpMaps(7).photo("OTHER", Side.COMPONENT);
    assertThat(whereItHurts(board.map())).contains("No hazard areas have been marked on it.");
    board.pairs(BoardMapSamples.TOP.text(), "OTHER", 12, 0.5);
    assertThat(whereItHurts(board.map())).doesNotContain("No hazard areas");
  }

  /** Over two line-ups, mirrored too; the captions count it, and a long title cuts none of them. */
  @Test
  void captionsCountTheZones_alsoThoseOverTwoLineUps() throws IOException {
    String title = "the-better-photo-from-below,-taken-in-May-with-the-new-lamp";
    LinedUpMaps board = new LinedUpMaps(9).photo("OTHER", Side.COMPONENT).photo(title, Side.SOLDER);
    board.pairs(BoardMapSamples.TOP.text(), "OTHER", 12, 0.5);
    assertThat(whereItHurts(board.map()))
        .contains("mirrored. No hazard areas have been marked on it.");
    board.pairs("OTHER", title, 12, 0.5);
    String printed = whereItHurts(board.map());
    assertThat(printed.split("\\. 1 hazard area\\.", -1)).hasSize(4);
    assertThat(printed).doesNotContain("No hazard areas");
  }

  private static String whereItHurts(BoardMap map) throws IOException {
    HazardZone zone =
        new HazardZone(
            new ZoneId("mains-1"),
            BoardMapSamples.TOP,
            HazardZone.Kind.MAINS,
            List.of(new Point(500, 500), new Point(1500, 500), new Point(1500, 1500)),
            "",
            List.of(BoardMapSamples.says(Evidence.SEEN)));
    try (Sheets sheets = new Sheets(of(map.with(MapTables.ZONES, Table.of(List.of(zone)))).pdf())) {
      return sheets.text(sheets.pageOf("Where it can hurt", sheets.pageOf("Contents") + 1));
    }
  }

  /**
   * Hands reach for a part as a whole: its node warns where its body or another pin is in a zone.
   */
  @Test
  void node_warnsOfAZoneThatHoldsAnotherPinOfOneOfItsParts() {
    BoardMap map = BoardMapSamples.divider();
    Subject pin = Subject.of(new PinRef(map.parts().stream().findFirst().orElseThrow().id(), "1"));
    Placement inside =
        new Placement(
            BoardMapSamples.TOP, pin, new Point(1200, 800), BoardMapSamples.says(Evidence.SEEN));
    BoardMap placed = map.with(MapTables.PLACEMENTS, map.placements().with(inside));
    assertThat(dangers(placed, "MID")).isEmpty();
    HazardZone zone =
        new HazardZone(
            new ZoneId("mains-1"),
            BoardMapSamples.TOP,
            HazardZone.Kind.MAINS,
            List.of(new Point(500, 500), new Point(1500, 500), new Point(1500, 1500)),
            "",
            List.of(BoardMapSamples.says(Evidence.SEEN)));
    BoardMap zoned = placed.with(MapTables.ZONES, Table.of(List.of(zone)));
    assertThat(dangers(zoned, "MID")).containsExactly(HazardZone.Kind.MAINS);
    assertThat(dangers(zoned, "0V")).isEmpty();
  }

  private static Set<HazardZone.Kind> dangers(BoardMap map, String net) {
    Circuit circuit = Circuit.of(map);
    Hazards hazards = Hazards.of(circuit, VoltageLimits.INSTRUMENTS);
    return NodeFacts.of(circuit, hazards, TwinIndex.of(circuit), new NetId(net)).dangers();
  }

  /** ISO 216: A4 is 210 x 297 mm; ANSI Y14.1: Letter is 8.5 x 11 inches. */
  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void everyPage_hasThePapersSize_andNothingInTheMargins(PaperSize paper) throws Exception {
    double width = paper == PaperSize.A4 ? 210 / 25.4 * 72 : 8.5 * 72;
    double height = paper == PaperSize.A4 ? 297 / 25.4 * 72 : 11 * 72;
    try (Sheets sheets = new Sheets(paper == PaperSize.A4 ? demo : letter)) {
      assertThat(sheets.count())
          .isGreaterThan(paper == PaperSize.A4 ? 3 : 2); // Letter has one node
      for (int page = 1; page <= sheets.count(); page++) {
        PDPage printed = sheets.document().getPage(page - 1);
        assertThat((double) printed.getMediaBox().getWidth()).isBetween(width - .1, width + .1);
        assertThat((double) printed.getMediaBox().getHeight()).isBetween(height - .1, height + .1);
        assertThat(inkInMargins(sheets.rendered(page, 1))).as("page " + page).isZero();
      }
    }
  }

  /** Pixels that aren't white within 14 mm of an edge. */
  private static int inkInMargins(BufferedImage page) {
    int margin = (int) (14 / 25.4 * 72);
    int ink = 0;
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        boolean inside =
            x >= margin
                && y >= margin
                && x < page.getWidth() - margin
                && y < page.getHeight() - margin;
        ink += !inside && (page.getRGB(x, y) & 0xFFFFFF) != 0xFFFFFF ? 1 : 0;
      }
    }
    return ink;
  }

  @Test
  void allCautions_standOnTheFirstPage_beforeAnyNode() throws IOException {
    try (Sheets sheets = new Sheets(demo)) {
      String first = sheets.text(1);
      assertThat(Cautions.all()).hasSizeGreaterThan(8);
      for (Caution caution : Cautions.all()) {
        assertThat(first).contains(caution.title(), caution.text());
      }
      assertThat(first).doesNotContain("A_ATT");
    }
  }

  @Test
  void everyPage_remindsThatAMapCantTell_andTellsWhereItIsFrom() throws Exception {
    String digest = sha256(Files.readAllBytes(Sheets.DEMO.resolve("map.json")));
    try (Sheets sheets = new Sheets(demo)) {
      // the cautions run over two pages, and what the map is stands behind them
      assertThat(sheets.text(1) + sheets.text(2))
          .contains(digest, "2026-03-04", "quillmarsh-type-40", "ISS 3");
      for (int page = 1; page <= sheets.count(); page++) {
        assertThat(sheets.text(page))
            .contains("can't tell what is live", digest.substring(0, 12))
            .contains("page %d of %d".formatted(page, sheets.count()));
      }
    }
  }

  private static String sha256(byte[] bytes) throws NoSuchAlgorithmException {
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
  }

  /** Practice, story 1: at A_MIR exactly four pins of U101 and R112.2; A_ATT: C102.-, R106.1. */
  @Test
  void nodeSheets_listThePinsOfTheDemosTable_withValueEvidenceAndBox() throws IOException {
    try (Sheets sheets = new Sheets(demo)) {
      String mirror = sheets.text(sheetOf(sheets, "A_MIR"));
      assertThat(mirror).contains("R112.2", "U101.6", "U101.9", "U101.11", "U101.14", "12k");
      assertThat(mirror).doesNotContain("U101.7 ").contains("Volts, channel A", "Meter, ohms");
      String att = sheets.text(sheetOf(sheets, "A_ATT"));
      assertThat(att).contains("C102.-", "10u 25V bead", "beeped", "R106.1", "47k");
      // both channels' boxes, and the twin's pin beside each: H of the practice reference, Cn02
      assertThat(att).contains("twin B_ATT", "C202.-", "Volts, channel A", "Volts, channel B");
      String out = sheets.text(sheetOf(sheets, "A_DOUT"));
      assertThat(out)
          .contains("U102.7 is here on the board; the drawing has it on A_BUFOUT.")
          .contains("The drawing has U102.1 here; on the board it is on A_BUFOUT.");
    }
  }

  /** The page that begins with the node; lists name it too. */
  private static int sheetOf(Sheets sheets, String node) {
    for (int page = 1; page <= sheets.count(); page++) {
      if (sheets.text(page).startsWith(node + " ")) {
        return page;
      }
    }
    throw new AssertionError("no sheet of " + node);
  }

  @Test
  void aNodeWithMains_hasItsCautionAndAPlanToTick_beforeItsPictures() throws IOException {
    Caution mains = Cautions.of(HazardZone.Kind.MAINS);
    try (Sheets sheets = new Sheets(demo)) {
      String text = sheets.text(sheetOf(sheets, "MAINS_L_SW"));
      assertThat(text).contains(mains.title(), mains.text(), NodeSheet.PLANNED);
      assertThat(text.indexOf(mains.title())).isLessThan(text.indexOf("Component side"));
      assertThat(text.indexOf(NodeSheet.PLANNED)).isLessThan(text.indexOf("Volts"));
      assertThat(sheets.text(sheetOf(sheets, "A_ATT"))).doesNotContain(NodeSheet.PLANNED);
    }
  }

  @Test
  void theSameCall_givesTheSameBytes_andAnotherDateOthers() throws StoreException {
    assertThat(demo(PaperSize.LETTER, RAW)).isEqualTo(letter);
    BoardMap map = BoardMapSamples.divider();
    MapSheets sheets = new MapSheets(Circuit.of(map), picture -> Path.of("/nowhere"));
    byte[] today = sheets.print(PaperSize.A4, List.of(), NOON, Progress.UNWATCHED).pdf();
    byte[] later =
        sheets
            .print(PaperSize.A4, List.of(), NOON.plus(Duration.ofDays(1)), Progress.UNWATCHED)
            .pdf();
    assertThat(later).isNotEqualTo(today);
  }

  /**
   * A flash of 330 u made for 350 V, of which nobody told a voltage: 20.2 J stand on its sheets.
   */
  @Test
  void ratedCharge_isToldWithJoulesSecondsAndResistor_asTheCommandTellsThem() throws IOException {
    BoardMap map =
        SupplySketch.of(
                """
                D1 diode - A=:CONV K=:STORE
                C1 cap-pol 330u_350V +=:STORE -=:GND
                R1 resistor 1M 1=:STORE 2=:GND
                C2 cap 1n_20kV 1=:EHT 2=:GND
                C3 cap-pol - +=:WHO -=:GND
                J1 mains-terminal - L=:L N=:N
                T1 transformer - 1=primary:L 2=primary:N 3=secondary:A 4=secondary:WHO
                net GND reference
                """)
            .map();
    try (Sheets sheets = new Sheets(of(map).pdf())) {
      String text = sheets.text(sheets.pageOf("Where it can hurt", sheets.pageOf("Contents") + 1));
      assertThat(text)
          .contains("350 V (its rating", "20.2 J", "R1, which may have failed", "10 min")
          .contains("has to bear 350 V", "into 2 or more of equal ohms in series")
          .contains("made for 20 kV and 200 mJ", "Nobody said what voltage these can hold: C3")
          .contains("Volts not told, take as high: ", "fed by a winding of T1");
      assertThat(sheets.text(sheetOf(sheets, "STORE")))
          .contains(Cautions.of(HazardZone.Kind.STORED_CHARGE).title(), NodeSheet.PLANNED);
      assertThat(sheets.text(sheetOf(sheets, "WHO"))).contains("take it as high until it is");
    }
  }

  /** Every entry's page is the page that begins with it. */
  @Test
  void contents_nameThePageOfEachNode_alsoOverSeveralPages() throws IOException {
    BoardMap map = BoardMapSamples.blank();
    for (int i = 100; i < 400; i++) {
      map = BoardMapSamples.with(map, BoardMapSamples.net("NODE_" + i));
    }
    try (Sheets sheets = new Sheets(of(map).pdf())) {
      int first = sheets.pageOf("Contents");
      int end =
          sheets.pageOf("Nodes and what is joined", sheets.pageOf("Where it can hurt", first) + 1);
      StringBuilder contents = new StringBuilder();
      for (int page = first; page < end; page++) {
        contents.append(sheets.text(page)).append(' ');
      }
      for (int i = 100; i < 400; i += 37) {
        assertThat(contents.toString())
            .containsPattern("Node NODE_%d %d\\b".formatted(i, sheetOf(sheets, "NODE_" + i)));
      }
    }
  }

  @Test
  void everyTypeface_isEmbedded() throws IOException {
    try (Sheets sheets = new Sheets(demo)) {
      int faces = 0;
      for (PDPage page : sheets.document().getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
          faces++;
        }
      }
      assertThat(faces).isPositive();
    }
  }

  @Test
  void signsOfUnits_arePrinted_andOthersByTheirCodePoint() throws IOException {
    BoardMap map = BoardMapSamples.divider();
    map = map.withInfo(MapInfo.titled("4k7 Ω, 10 µF – ±1 % ≥ 2 °C → Ж é \u4e2d \ud83d\ude00"));
    try (Sheets sheets = new Sheets(of(map).pdf())) {
      assertThat(sheets.text(1)).contains("4k7 Ω, 10 µF – ±1 % ≥ 2 °C → Ж é [U+4E2D] [U+1F600]");
    }
  }

  @Test
  void aSheetThatNearlyFits_isMadeToFitOnOnePage() throws IOException {
    try (Sheets sheets = new Sheets(letter)) {
      int page = sheetOf(sheets, "RAW_P");
      assertThat(page).isEqualTo(sheets.count());
      assertThat(sheets.text(page)).contains("BR1.PLUS", "C2.+", "Q1.C", "R2.1", "R4.1");
    }
  }

  @Test
  void voltages_keepTheirZeros() throws IOException {
    BoardMap map = BoardMapSamples.divider();
    Net high = map.net(new NetId("VP")).orElseThrow();
    Potential kilovolts = new Potential(Potential.Nature.DC, 1200);
    map = BoardMapSamples.with(map, high.withPotential(kilovolts));
    try (Sheets sheets = new Sheets(of(map).pdf())) {
      assertThat(sheets.text(sheetOf(sheets, "VP"))).contains("1.2 kV DC");
      assertThat(sheets.text()).contains("VP high voltage 1.2 kV");
    }
  }

  @Test
  void anEmptyMap_isPrinted_andSaysThatNothingIsKnown() throws IOException {
    try (Sheets sheets = new Sheets(of(BoardMap.empty("e", MapInfo.titled("Empty"))).pdf())) {
      assertThat(sheets.text()).contains("That says nothing of the instrument");
      assertThat(sheets.text(1)).contains(Cautions.of("unplug").text());
    }
  }

  @Test
  void picturesThatAreGone_areTold_andTheRestIsPrinted() throws IOException {
    BoardMap map = BoardMapSamples.random(7);
    FinishedSheets printed = of(map);
    assertThat(printed.troubles()).isNotEmpty();
    assertThat(printed.troubles().get(0)).contains("/nowhere").doesNotContain("\n");
    try (Sheets sheets = new Sheets(printed.pdf())) {
      assertThat(sheets.count()).isEqualTo(printed.pages());
      assertThat(sheets.text()).contains("can't be read; places are marked on an empty frame.");
    }
  }

  @Test
  void anUnknownNode_andACancel_giveNoSheets() {
    BoardMap map = BoardMapSamples.divider();
    MapSheets sheets = new MapSheets(Circuit.of(map), picture -> Path.of("/nowhere"));
    assertThatThrownBy(
            () -> sheets.print(PaperSize.A4, List.of(new NetId("X")), NOON, Progress.UNWATCHED))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("X");
    assertThatThrownBy(
            () -> sheets.print(PaperSize.A4, MapSheets.allNodes(map), NOON, fraction -> false))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void nothingOfTheFilesButPixels_isPrinted() {
    String raw = new String(demo, StandardCharsets.ISO_8859_1);
    assertThat(raw).doesNotContain("Exif", "photos/component.jpg");
  }
}
