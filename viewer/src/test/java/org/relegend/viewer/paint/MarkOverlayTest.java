package org.relegend.viewer.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Box;
import org.relegend.map.Evidence;
import org.relegend.map.PartId;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

class MarkOverlayTest {
  /** The reference looks at every mark. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void in_findsWhatLookingAtEachFinds(long seed) {
    Random random = new Random(seed);
    List<Mark> marks = new ArrayList<>(MarkSamples.spread(700, 5000, 3000, seed));
    marks.add(MarkSamples.body("T1", 2500, 1500, 3000, 2000));
    MarkOverlay overlay = new MarkOverlay(marks);
    for (int i = 0; i < 100; i++) {
      double x = 6000 * random.nextDouble() - 500;
      double y = 4000 * random.nextDouble() - 500;
      double size = Math.exp(8 * random.nextDouble());
      Box box = new Box(x, y, x + size, y + size * random.nextDouble());

      Set<Mark> expected =
          new HashSet<>(marks.stream().filter(mark -> mark.bounds().touches(box)).toList());

      assertThat(new HashSet<>(overlay.in(box))).isEqualTo(expected);
    }
  }

  @Test
  void in_noMarks_findsNone() {
    assertThat(new MarkOverlay(List.of()).in(new Box(0, 0, 10, 10))).isEmpty();
    assertThat(new MarkOverlay(List.of()).pointedAt(new Point(0, 0), 5)).isEmpty();
  }

  @Test
  void pointedAt_prefersTheNearestPad_thenTheSmallestBodyAround() {
    Mark small = MarkSamples.body("R1", 100, 100, 40, 20);
    Mark large = MarkSamples.body("T1", 100, 100, 400, 400);
    Mark pad = MarkSamples.pad("R1.1", 112, 100, Mark.Emphasis.PLAIN);
    Mark other = MarkSamples.pad("R1.2", 88, 100, Mark.Emphasis.PLAIN);
    MarkOverlay overlay = new MarkOverlay(List.of(small, large, pad, other));

    assertThat(overlay.pointedAt(new Point(109, 100), 8)).contains(pad);
    assertThat(overlay.pointedAt(new Point(99, 100), 30)).contains(other);
    assertThat(overlay.pointedAt(new Point(100, 100), 8)).contains(small);
    assertThat(overlay.pointedAt(new Point(250, 100), 8)).contains(large);
    assertThat(overlay.pointedAt(new Point(350, 100), 8)).isEmpty();
  }

  /** Signs sit on their place in every view, and their labels can be read in every view. */
  @ParameterizedTest(name = "{0}")
  @EnumSource(Mark.Emphasis.class)
  void signs_lieOnTheirPlace_andTextIsNeverMirrored(Mark.Emphasis emphasis) {
    Mark pad = MarkSamples.pad("R1.1", 130, 70, emphasis);
    Mark bare = new Mark(pad.subject(), pad.at(), List.of(), "", Evidence.SEEN, emphasis);
    BufferedImage label = null;
    for (Orientation orientation :
        List.of(
            Orientation.UPRIGHT,
            Orientation.UPRIGHT.flipped(),
            new Orientation(1, true, 4),
            new Orientation(2, false, 0))) {
      ViewState view = ViewState.fit(200, 150, 300, 300, orientation).centredOn(pad.at(), 5);
      BufferedImage screen = painted(new MarkOverlay(List.of(bare)), view);
      ScreenPoint at = view.toScreen(pad.at());
      assertThat(middleOfChange(screen).distance(at)).as("%s", orientation).isLessThan(0.75);

      BufferedImage withText = painted(new MarkOverlay(List.of(pad)), view);
      BufferedImage part =
          withText.getSubimage(
              (int) Math.round(at.x()) + 16, (int) Math.round(at.y()) - 12, 60, 24);
      if (label == null) {
        label = part;
      }
      assertThat(pixels(part)).as("%s", orientation).isEqualTo(pixels(label));
    }
  }

  @Test
  void everyEmphasis_hasAShapeOfItsOwn_alsoWithoutColour() {
    Set<List<Integer>> shapes = new HashSet<>();
    for (Mark.Emphasis emphasis : Mark.Emphasis.values()) {
      Mark pad = MarkSamples.pad("R1.1", 100, 100, emphasis);
      Mark bare = new Mark(pad.subject(), pad.at(), List.of(), "", Evidence.SEEN, emphasis);
      shapes.add(silhouette(bare));
    }
    assertThat(shapes).hasSize(Mark.Emphasis.values().length);
  }

  @Test
  void weakEvidence_isToldByTheSignAndAQuestionMark() {
    Mark seen = MarkSamples.pad("R1.1", 100, 100, Mark.Emphasis.JOINED);
    Mark guessed =
        new Mark(seen.subject(), seen.at(), List.of(), "1", Evidence.GUESSED, seen.emphasis());
    Mark sure =
        new Mark(seen.subject(), seen.at(), List.of(), "1", Evidence.MEASURED, seen.emphasis());
    ViewState view = ViewState.fit(200, 200, 400, 400, Orientation.UPRIGHT);

    assertThat(pixels(painted(new MarkOverlay(List.of(guessed)), view)))
        .isNotEqualTo(pixels(painted(new MarkOverlay(List.of(sure)), view)));
  }

  @Test
  void plainLabels_areLeftOutWhereThereIsNoRoom_othersNever() {
    List<Mark> crowd = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      int column = i % 20;
      int row = i / 20;
      crowd.add(MarkSamples.pad("R" + i + ".1", 10 * column, 10 * row, Mark.Emphasis.PLAIN));
    }
    List<Mark> unlabelled =
        crowd.stream()
            .map(m -> new Mark(m.subject(), m.at(), List.of(), "", m.evidence(), m.emphasis()))
            .toList();
    ViewState far = ViewState.fit(200, 200, 300, 300, Orientation.UPRIGHT);
    ViewState near = far.centredOn(new Point(100, 100), 8);

    assertThat(pixels(painted(new MarkOverlay(crowd), far)))
        .isEqualTo(pixels(painted(new MarkOverlay(unlabelled), far)));
    assertThat(pixels(painted(new MarkOverlay(crowd), near)))
        .isNotEqualTo(pixels(painted(new MarkOverlay(unlabelled), near)));
    crowd.set(210, crowd.get(210).with(Mark.Emphasis.SELECTED));
    assertThat(pixels(painted(new MarkOverlay(crowd), far)))
        .isNotEqualTo(pixels(painted(new MarkOverlay(unlabelled), far)));
  }

  @Test
  void outline_isDrawnAlongTheBody() {
    Mark body =
        new Mark(
            Subject.of(new PartId("U1")),
            new Point(100, 100),
            MarkSamples.box(new Point(100, 100), 40, 20),
            "",
            Evidence.SEEN,
            Mark.Emphasis.SELECTED);
    ViewState view = ViewState.fit(200, 200, 400, 400, Orientation.UPRIGHT);

    BufferedImage screen = painted(new MarkOverlay(List.of(body)), view);

    Color line = MarkStyle.of(Mark.Emphasis.SELECTED).colour();
    assertThat(screen.getRGB(120, 200)).isEqualTo(line.getRGB());
    assertThat(screen.getRGB(280, 200)).isEqualTo(line.getRGB());
    assertThat(screen.getRGB(200, 160)).isEqualTo(line.getRGB());
    assertThat(screen.getRGB(200, 200)).isEqualTo(Color.GRAY.getRGB());
  }

  private static List<Integer> silhouette(Mark mark) {
    ViewState view = ViewState.fit(200, 200, 200, 200, Orientation.UPRIGHT);
    BufferedImage screen = painted(new MarkOverlay(List.of(mark)), view);
    List<Integer> shape = new ArrayList<>();
    for (int pixel : pixels(screen)) {
      shape.add(pixel == Color.GRAY.getRGB() ? 0 : 1);
    }
    return shape;
  }

  static BufferedImage painted(Overlay overlay, ViewState view) {
    BufferedImage screen =
        new BufferedImage(view.width(), view.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = screen.createGraphics();
    g.setColor(Color.GRAY);
    g.fillRect(0, 0, view.width(), view.height());
    overlay.paint(g, view);
    g.dispose();
    return screen;
  }

  static List<Integer> pixels(BufferedImage image) {
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    return Arrays.stream(pixels).boxed().toList();
  }

  private static ScreenPoint middleOfChange(BufferedImage screen) {
    int left = Integer.MAX_VALUE;
    int top = Integer.MAX_VALUE;
    int right = 0;
    int bottom = 0;
    for (int y = 0; y < screen.getHeight(); y++) {
      for (int x = 0; x < screen.getWidth(); x++) {
        if (screen.getRGB(x, y) != Color.GRAY.getRGB()) {
          left = Math.min(left, x);
          right = Math.max(right, x + 1);
          top = Math.min(top, y);
          bottom = Math.max(bottom, y + 1);
        }
      }
    }
    return new ScreenPoint((left + right) / 2.0, (top + bottom) / 2.0);
  }
}
