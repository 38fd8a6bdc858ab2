package org.relegend.viewer.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.map.HazardZone;
import org.relegend.map.Point;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ViewState;

class ScrollBufferTest {
  private static final int WIDTH = 420;
  private static final int HEIGHT = 310;

  private final List<Overlay> overlays =
      List.of(
          new MarkOverlay(MarkSamples.spread(400, 3000, 2000, 3)),
          new PredictedPlaceOverlay(
              List.of(
                  new PredictedPlaceOverlay.Predicted(new Point(1500, 1000), 90, List.of(), "C202"),
                  new PredictedPlaceOverlay.Predicted(new Point(1400, 900), 0, List.of(), "R1"))),
          new HazardOverlay(
              List.of(
                  MarkSamples.zone(
                      "z",
                      HazardZone.Kind.MAINS,
                      new Point(1300, 800),
                      new Point(2300, 900),
                      new Point(1900, 1900)))));

  private long paintedPixels;

  private final ScrollBuffer.Painter painter =
      (g, view, image, area) -> {
        paintedPixels += (long) area.width * area.height;
        g.setColor(Color.GRAY);
        g.fill(g.getClipBounds());
        for (Overlay overlay : overlays) {
          Graphics2D own = (Graphics2D) g.create();
          own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
          overlay.paint(own, view);
          own.dispose();
        }
      };

  /** However the picture was moved there, what is seen is what painting it at once gives. */
  @ParameterizedTest(name = "seed {0}, margin {1}")
  @CsvSource({
    "1, 0", "2, 0", "3, 0", "4, 0", "5, 48", "6, 48", "7, 48", "8, 200", "9, 96", "10, 7"
  })
  void moved_looksAsIfPaintedAnew(long seed, double margin) {
    Random random = new Random(seed);
    double deviceScale = List.of(1.0, 1.5, 2.0).get(random.nextInt(3));
    Orientation orientation =
        new Orientation(random.nextInt(4), random.nextBoolean(), random.nextInt(2) * 3.3);
    ViewState view =
        ViewState.fit(3000, 2000, WIDTH, HEIGHT, orientation)
            .centredOn(new Point(1500, 1000), 0.3 + random.nextDouble());
    ScrollBuffer buffer = new ScrollBuffer();
    buffer.setMargin(margin);
    for (int i = 0; i < 40; i++) {
      buffer.update(view, deviceScale, painter);
      view =
          view.movedBy(
              Math.rint(30 * random.nextGaussian()) * 2, Math.rint(30 * random.nextGaussian()) * 2);
      if (i % 4 == 3) {
        buffer.invalidate(50, 60, 100, 80);
      } else if (i % 13 == 6) {
        buffer.dropMargin();
      }
    }
    buffer.update(view, deviceScale, painter);
    ScrollBuffer fresh = new ScrollBuffer();
    fresh.update(view, deviceScale, painter);

    BufferedImage seen = screen(buffer, deviceScale);
    BufferedImage expected = screen(fresh, deviceScale);
    int different = 0;
    for (int y = 0; y < seen.getHeight(); y++) {
      for (int x = 0; x < seen.getWidth(); x++) {
        different += distance(seen.getRGB(x, y), expected.getRGB(x, y)) > 24 ? 1 : 0;
      }
    }
    assertThat(different).as("pixels that differ visibly").isLessThanOrEqualTo(5);
  }

  @Test
  void moved_paintsOnlyTheStripsThatCameIntoView() {
    ScrollBuffer buffer = new ScrollBuffer();
    ViewState view =
        ViewState.fit(3000, 2000, WIDTH, HEIGHT, Orientation.UPRIGHT)
            .centredOn(new Point(1500, 1000), 1);
    buffer.update(view, 1, painter);
    paintedPixels = 0;

    buffer.update(view.movedBy(-7, 4), 1, painter);

    assertThat(paintedPixels).isBetween(7L * HEIGHT + 4L * WIDTH - 28, 7L * HEIGHT + 4L * WIDTH);
    paintedPixels = 0;
    buffer.update(view.movedBy(-7, 4), 1, painter);
    assertThat(paintedPixels).isZero();
  }

  @Test
  void withAMargin_mostMovesPaintNothing_andNoPlaceIsPaintedTwice() {
    ScrollBuffer buffer = new ScrollBuffer();
    buffer.setMargin(50);
    ViewState view =
        ViewState.fit(3000, 2000, WIDTH, HEIGHT, Orientation.UPRIGHT)
            .centredOn(new Point(1500, 1000), 1);
    buffer.update(view, 1, painter);
    assertThat(paintedPixels).isEqualTo((long) WIDTH * HEIGHT);
    paintedPixels = 0;
    int painted = 0;
    for (int step = 1; step <= 50; step++) {
      long before = paintedPixels;
      buffer.update(view.movedBy(-5 * step, 0), 1, painter);
      painted += paintedPixels > before ? 1 : 0;
    }
    assertThat(painted).isEqualTo(5);
    assertThat(paintedPixels).isEqualTo((5 * 55 - 5 * 5 + 5 * 5L) * HEIGHT);
  }

  @Test
  void zoomedTurnedOrInvalidated_paintsAll() {
    ScrollBuffer buffer = new ScrollBuffer();
    ViewState view = ViewState.fit(3000, 2000, WIDTH, HEIGHT, Orientation.UPRIGHT);
    ViewState zoomed = view.centredOn(new Point(1500, 1000), 1);
    ViewState turned = zoomed.withOrientation(Orientation.UPRIGHT.turned(2));
    for (ViewState next : List.of(view, zoomed, turned)) {
      paintedPixels = 0;
      buffer.update(next, 1, painter);
      assertThat(paintedPixels).isEqualTo((long) WIDTH * HEIGHT);
    }
    paintedPixels = 0;
    buffer.invalidate();
    buffer.update(turned, 1, painter);
    assertThat(paintedPixels).isEqualTo((long) WIDTH * HEIGHT);
    buffer.update(turned, 2, painter);
    assertThat(paintedPixels).isEqualTo(5L * WIDTH * HEIGHT);
  }

  @Test
  void invalidatedPart_isPaintedAloneAndOnce() {
    ScrollBuffer buffer = new ScrollBuffer();
    ViewState view = ViewState.fit(3000, 2000, WIDTH, HEIGHT, Orientation.UPRIGHT);
    buffer.update(view, 1, painter);
    paintedPixels = 0;
    buffer.invalidate(10, 10, 20, 20);
    buffer.invalidate(12, 12, 3, 3);
    buffer.invalidate(-500, 0, 20, 20);

    buffer.update(view, 1, painter);

    assertThat(paintedPixels).isEqualTo(22L * 22);
  }

  private static BufferedImage screen(ScrollBuffer buffer, double deviceScale) {
    Rectangle size =
        new Rectangle((int) Math.ceil(WIDTH * deviceScale), (int) Math.ceil(HEIGHT * deviceScale));
    BufferedImage screen = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = screen.createGraphics();
    g.scale(deviceScale, deviceScale);
    buffer.copyTo(g);
    g.dispose();
    return screen;
  }

  private static int distance(int a, int b) {
    int most = 0;
    for (int shift = 0; shift < 24; shift += 8) {
      most = Math.max(most, Math.abs((a >> shift & 0xFF) - (b >> shift & 0xFF)));
    }
    return most;
  }
}
