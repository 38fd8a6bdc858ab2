package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JLabel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardTurn;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.scan.PictureIntake;
import org.relegend.scan.Progress;
import org.relegend.scan.ScanSamples;
import org.relegend.store.MapFolder;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.mode.look.LookTool;
import org.relegend.viewer.mode.place.PlaceTool;
import org.relegend.viewer.mode.straighten.StraightenTool;
import org.relegend.viewer.session.Notice;

/**
 * Component and solder side of the demo lined up at the real window: the map begins with nothing
 * placed on the solder side, and the places that the demo ships there are the truth.
 */
class LineUpStoryIT {
  private static final PictureId TOP = new PictureId("component");
  private static final PictureId OTHER = new PictureId("other");
  private static final PictureId SOLDER = new PictureId("solder");

  /** Pixels of the demo's solder photo that a millimetre takes, about. */
  private static final double PIXELS_A_MM = 14;

  /** Spread over the board, away from its mains corner. */
  private static final List<String> PADS =
      List.of("C104.2", "R101.1", "R206.2", "J203.2", "J201.T", "J101.T");

  private static final String NEW = "Q102.B";

  @TempDir private Path folder;
  private Path map = Path.of("");
  private final Map<String, Point> onTop = new HashMap<>();
  private final Map<String, Point> onSolder = new HashMap<>();

  @BeforeEach
  void demoWithNothingPlacedOnTheSolderSide() throws Exception {
    map = DemoCopy.into(folder);
    try (MapFolder opened = MapFolder.open(map)) {
      BoardMap demo = opened.map();
      for (Placement placement : demo.placements()) {
        if (placement.picture().equals(TOP)) {
          onTop.put(placement.subject().toString(), placement.at());
        } else if (placement.picture().equals(SOLDER)) {
          onSolder.put(placement.subject().toString(), placement.at());
        }
      }
      opened.save(
          demo.with(
              MapTables.PLACEMENTS,
              Table.of(
                  demo.placements().stream()
                      .filter(placement -> !placement.picture().equals(SOLDER))
                      .filter(
                          placement ->
                              !placement.picture().equals(TOP)
                                  || !placement.subject().toString().startsWith("Q102"))
                      .toList())));
    }
  }

  private Technician start() throws Exception {
    ViewerPreferences settings = ViewerPreferences.inMemory();
    settings.setTheme(Theme.LIGHT);
    return Technician.start(Optional.of(map), settings, folder.resolve("cache"));
  }

  private static Point at(Map<String, Point> places, String pad) {
    return Optional.ofNullable(places.get(pad))
        .orElseThrow(() -> new AssertionError(pad + " is not placed in the demo"));
  }

  private static LineUpTool pairing(Technician tech) {
    return tech.session().room(LineUpTool.class);
  }

  private void pair(Technician tech, String pad, double off) {
    tech.click(tech.panel().page(), at(onSolder, pad).plus(off, 0));
    tech.click(tech.panel().photo(), at(onTop, pad));
  }

  @Test
  void pairsAreClicked_theBadOneIsNamedAndCorrected_andPlacesAreSeenOnTheOtherSide()
      throws Exception {
    try (Technician tech = start()) {
      tech.key("F6");
      tech.key("shift L");
      tech.await("the mode", () -> tech.session().isIn(LineUpTool.class));
      assertThat(pairing(tech).left().orElseThrow().id()).isEqualTo(SOLDER);
      assertThat(pairing(tech).right().orElseThrow().id()).isEqualTo(TOP);
      for (int i = 0; i < PADS.size(); i++) {
        pair(tech, PADS.get(i), i == 2 ? 320 : 0);
        if (i == 1) {
          tech.shoot("lineup-two-pairs");
        }
      }
      assertThat(pairing(tech).spots()).hasSize(6);
      assertThat(pairing(tech).standing(2)).isEqualTo(LineUpTool.PairState.WRONG);
      assertThat(pairing(tech).standing(0)).isNotEqualTo(LineUpTool.PairState.WRONG);
      JLabel advice = tech.named(JLabel.class, "pairs-advice");
      tech.await("the bad one named", () -> advice.getText().contains("Pair 3 is off by 3"));
      tech.shoot("lineup-bad-pair");

      Point wrong = at(onSolder, PADS.get(2)).plus(320, 0);
      tech.drag(tech.panel().page(), wrong, at(onSolder, PADS.get(2)));
      tech.await(
          "the bad one mended", () -> pairing(tech).standing(2) != LineUpTool.PairState.WRONG);
      assertThat(pairing(tech).fit().orElseThrow().inliers()).hasSize(6);
      tech.shoot("lineup-mended");
      tech.key("ctrl Z");
      assertThat(pairing(tech).standing(2)).isEqualTo(LineUpTool.PairState.WRONG);
      tech.key("ctrl Y");
      assertThat(pairing(tech).fit().orElseThrow().inliers()).hasSize(6);

      tech.key("ESCAPE");
      tech.await("the page again", () -> tech.session().desk().facing().isEmpty());
      placeOnTop(tech);
      Placement.Key carried = new Placement.Key(SOLDER, Subject.parse(NEW), 1);
      assertThat(tech.session().document().carried(carried))
          .get()
          .satisfies(
              place -> assertThat(place.at().distance(at(onSolder, NEW))).isLessThan(PIXELS_A_MM));
      tech.key("F");
      tech.await(
          "the solder side", () -> tech.session().desk().photo().orElseThrow().id().equals(SOLDER));
      tech.shoot("lineup-carried");
      tech.key("X");
      JLabel stated = tech.named(JLabel.class, "photo-title");
      tech.await("the other photo laid over", () -> stated.getText().endsWith("50%"));
      tech.shoot("lineup-laid-over");
      tech.key("X");
      tech.await("it alone", () -> stated.getText().endsWith("100%"));
      tech.key("X");
      tech.await("it gone", () -> !stated.getText().contains("%"));
      confirm(tech, carried);
    }
  }

  /** Photographed by another phone: nothing to click, until the photos show two sides. */
  @Test
  void photoOfAnotherUnit_isLinedUpWithoutClicks_andTwoSidesAskForPairs() throws Exception {
    addOtherUnit();
    try (Technician tech = start()) {
      tech.key("F6");
      tech.key("shift L");
      tech.await("the mode", () -> tech.session().isIn(LineUpTool.class));
      tech.key("shift A");
      tech.await(
          "the reason",
          () -> tech.session().notice().orElseThrow().kind() == Notice.Kind.NOT_LINED_UP);
      assertThat(pairing(tech).kept()).isEmpty();
      Technician.onEdt(
          () -> {
            tech.session().desk().showLeft(OTHER);
            return true;
          });
      tech.await("the line-up", () -> pairing(tech).lineUp().isPresent());
      assertThat(tech.named(JLabel.class, "page-state").getText()).contains("2 hazard areas");
      tech.shoot("lineup-alone");
      tech.key("ESCAPE");
      Placement.Key pin = new Placement.Key(OTHER, Subject.parse("R111.1"), 1);
      assertThat(tech.session().document().carried(pin)).isPresent();
    }
  }

  /** Another scan of the same page, turned and cut off: what is placed on the first shows on it. */
  @Test
  void twoScansOfAPage_areLinedUpWithoutClicks() throws Exception {
    ScanSamples.Scan scan =
        ScanSamples.of(map.resolve("pages/schematic.pdf"), 1, 2, true)
            .scan(-1.7, 0.9, 0.04, 0.05, 12, 5);
    Path file = folder.resolve("better.png");
    ImageIO.write(scan.image(), "png", file.toFile());
    try (MapFolder opened = MapFolder.open(map)) {
      opened.save(
          new PictureIntake(map, opened.map())
              .pages(file, "Better scan", List.of(1), Progress.UNWATCHED)
              .applyTo(opened.map()));
    }
    PictureId first = new PictureId("page-1");
    PictureId better = new PictureId("better-scan");
    Subject pin = Subject.parse("R111.1");
    try (Technician tech = start()) {
      Technician.onEdt(
          () -> {
            tech.session().desk().show(first);
            tech.session().room(LineUpTool.class).takePages();
            tech.session().desk().showRight(better);
            return true;
          });
      tech.await("the line-up", () -> pairing(tech).lineUp().isPresent());
      assertThat(pairing(tech).left().orElseThrow().id()).isEqualTo(first);
      tech.shoot("lineup-pages");
      tech.key("ESCAPE");
      tech.await("the photo again", () -> tech.session().desk().beside().isEmpty());
      Point onFirst =
          tech.session()
              .map()
              .placements()
              .find(new Placement.Key(first, pin, 1))
              .orElseThrow()
              .at();
      Point carried =
          tech.session().document().carried(new Placement.Key(better, pin, 1)).orElseThrow().at();
      assertThat(carried.distance(scan.place(onFirst))).isLessThan(2);
    }
  }

  /** Four clicks and a size; then a pin shows on the new photo too, and one key takes all back. */
  @Test
  void photoIsStraightened_andItsPlacesShowOnTheNewOne() throws Exception {
    List<Point> corners =
        List.of(
            new Point(203.09, 338.85),
            new Point(3810.61, 269.32),
            new Point(3886.92, 2640.96),
            new Point(196.52, 2686.14));
    try (Technician tech = start()) {
      tech.key("F6");
      tech.key("shift S");
      tech.await("the tool", () -> tech.session().isIn(StraightenTool.class));
      corners.subList(0, 3).forEach(corner -> tech.click(tech.panel().photo(), corner));
      tech.shoot("straighten-corners");
      tech.click(tech.panel().photo(), corners.get(3));
      tech.await("the question", () -> tech.session().question().isPresent());
      Evidence before = tech.session().hand().evidence();
      tech.type("250 x 162");
      assertThat(tech.session().hand().evidence()).as("digits are text here").isEqualTo(before);
      tech.shoot("straighten-size");
      tech.key("ENTER");
      PictureId made = new PictureId("component-side-square-on");
      tech.await(
          "the new photo",
          () -> tech.session().desk().photo().filter(photo -> photo.id().equals(made)).isPresent());
      Placement.Key pin = new Placement.Key(made, Subject.parse("R111.1"), 1);
      assertThat(tech.session().document().carried(pin)).isPresent();
      tech.key("ESCAPE");
      tech.find("R111");
      tech.shoot("straightened");
      tech.key("ctrl Z");
      tech.await("it gone", () -> tech.session().map().picture(made).isEmpty());
      Container strip = (Container) tech.panel().photo().filmstrip().getViewport().getView();
      tech.await("two small pictures", () -> strip.getComponentCount() == 4);
      tech.key("ctrl Y");
      tech.await("three of them, each with a strut", () -> strip.getComponentCount() == 6);
    }
  }

  private void addOtherUnit() throws Exception {
    Path photo =
        Path.of(
            System.getProperty("relegend.root", ".."), "demo-data", "other-unit", "component.jpg");
    Files.copy(photo, map.resolve("photos/other.jpg"));
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(photo));
    try (MapFolder opened = MapFolder.open(map)) {
      BoardMap demo = opened.map();
      opened.save(
          demo.with(
              MapTables.PICTURES,
              demo.pictures()
                  .with(
                      new Photo(
                          OTHER,
                          "Other unit",
                          "photos/other.jpg",
                          new BoardId("main"),
                          Side.COMPONENT,
                          BoardTurn.UNKNOWN,
                          HexFormat.of().formatHex(digest),
                          4080,
                          3060))));
    }
  }

  private void placeOnTop(Technician tech) {
    tech.key("P");
    tech.await("the tool", () -> tech.session().isIn(PlaceTool.class));
    tech.key("ctrl A");
    tech.type(NEW);
    tech.click(tech.panel().photo(), at(onTop, NEW));
    tech.await(
        "the place",
        () -> tech.session().map().placements().has(new Placement.Key(TOP, Subject.parse(NEW), 1)));
    tech.key("ESCAPE");
    tech.key("ESCAPE");
    tech.await("looking", () -> tech.session().isIn(LookTool.class));
    tech.click(tech.panel().photo(), at(onTop, NEW));
    tech.await(
        "the choice",
        () -> tech.session().selection().subject().equals(Optional.of(Subject.parse(NEW))));
  }

  /** Pointed at on the solder side and confirmed, the place is that photo's own. */
  private static void confirm(Technician tech, Placement.Key carried) {
    Point at = tech.session().document().carried(carried).orElseThrow().at();
    tech.click(tech.panel().photo(), at);
    assertThat(tech.session().selection().marked()).containsExactly(carried);
    tech.key("C");
    tech.await("it is placed", () -> tech.session().map().placements().has(carried));
    assertThat(tech.session().document().carried(carried)).isEmpty();
    tech.shoot("lineup-confirmed");
  }
}
