package org.relegend.viewer.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Point;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

class LabelPlacesTest {
  private final SpriteCache sprites = new SpriteCache();
  private final Graphics2D g = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB).createGraphics();

  /** The pads of one side of a package, so near to each other that plain labels would overlap. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void labels_ofPadsInARow_coverNeitherEachOtherNorAPad(int quarterTurns) {
    List<Mark> pads = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      pads.add(MarkSamples.pad("U10" + i + ".1", 500 + 60 * i, 500, Mark.Emphasis.JOINED));
    }
    ViewState view = ViewState.fit(1000, 1000, 500, 500, new Orientation(quarterTurns, false, 0));
    List<Rectangle2D> plates = plates(pads, view);
    for (int i = 0; i < plates.size(); i++) {
      for (int j = 0; j < plates.size(); j++) {
        if (i != j) {
          assertThat(plates.get(i).intersects(plates.get(j))).as("%d and %d", i, j).isFalse();
          ScreenPoint pad = view.toScreen(pads.get(j).at());
          assertThat(plates.get(i).contains(pad.x(), pad.y())).as("%d over %d", i, j).isFalse();
        }
      }
    }
  }

  @Test
  void offsets_areTheSameWhateverIsInView() {
    List<Mark> pads = new ArrayList<>();
    for (Mark mark : MarkSamples.spread(60, 800, 800, 5)) {
      pads.add(mark.with(Mark.Emphasis.JOINED));
    }
    ViewState view = ViewState.fit(1000, 1000, 500, 500, Orientation.UPRIGHT);
    ViewState there = view.centredOn(new Point(123.4, 567.8), view.scale());
    for (Mark mark : pads) {
      assertThat(new LabelPlaces(pads, List.of(), sprites).offset(g, there, mark))
          .isEqualTo(new LabelPlaces(pads, List.of(), sprites).offset(g, view, mark));
    }
  }

  @Test
  void aloneOnThePicture_padsAreLabelledAtTheRight_bodiesInTheirMiddle() {
    Mark pad = MarkSamples.pad("R1.1", 500, 500, Mark.Emphasis.SELECTED);
    Mark body = MarkSamples.body("R2", 200, 200, 80, 40).with(Mark.Emphasis.JOINED);
    ViewState view = ViewState.fit(1000, 1000, 500, 500, Orientation.UPRIGHT);
    LabelPlaces places = new LabelPlaces(List.of(body, pad), List.of(), sprites);
    Point2D offset = places.offset(g, view, pad);
    assertThat(offset.getX()).isPositive();
    assertThat(offset.getY()).isZero();
    assertThat(places.offset(g, view, body)).isEqualTo(new Point2D.Double());
  }

  private List<Rectangle2D> plates(List<Mark> marks, ViewState view) {
    LabelPlaces places = new LabelPlaces(marks, List.of(), sprites);
    List<Rectangle2D> plates = new ArrayList<>();
    for (Mark mark : marks) {
      ScreenPoint at = view.toScreen(mark.at());
      Point2D offset = places.offset(g, view, mark);
      Point2D size = sprites.plateSize(g, mark.label(), mark.emphasis());
      plates.add(
          new Rectangle2D.Double(
              at.x() + offset.getX() - size.getX() / 2,
              at.y() + offset.getY() - size.getY() / 2,
              size.getX(),
              size.getY()));
    }
    return plates;
  }

  @Test
  void plainMarks_areLabelledOnlyWhereThereIsRoom_bodiesBeforePads() {
    Mark pad = MarkSamples.pad("R2.1", 200, 200, Mark.Emphasis.PLAIN);
    Mark body = MarkSamples.body("R2", 230, 200, 80, 40);
    Mark away = MarkSamples.pad("R3.1", 800, 800, Mark.Emphasis.PLAIN);
    Mark chosen = MarkSamples.pad("R9.1", 800, 300, Mark.Emphasis.SELECTED);
    Mark under = MarkSamples.pad("R9.2", 804, 300, Mark.Emphasis.PLAIN);
    LabelPlaces places = new LabelPlaces(List.of(chosen), List.of(pad, body, away, under), sprites);
    ViewState view = ViewState.fit(1000, 1000, 500, 500, Orientation.UPRIGHT);
    assertThat(places.offsetOfPlain(g, view, body)).isPresent();
    assertThat(places.offsetOfPlain(g, view, pad)).isEmpty();
    assertThat(places.offsetOfPlain(g, view, away)).isPresent();
    assertThat(places.offsetOfPlain(g, view, under)).isEmpty();
    ViewState near = view.centredOn(new Point(200, 200), 8);
    assertThat(places.offsetOfPlain(g, near, pad)).isPresent();
  }
}
