package org.relegend.viewer.session;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.lineup.PlacedScale;
import org.relegend.lineup.Scale;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Point;

/**
 * Measuring on a photo in millimetres, between two clicks. The scale is told by a distance that the
 * technician gave for that photo, else by the pins of the nearest package placed there; where there
 * is neither, the distance of the two points is asked for.
 */
public final class Measuring {
  private final Document document;
  private final Hub hub;
  private final Questions questions;
  private final Map<PictureId, Scale> given = new HashMap<>();
  private @Nullable Length length;

  /**
   * What is measured.
   *
   * @param points one or two
   * @param text the distance, or empty while it isn't known
   */
  public record Length(PictureId picture, List<Point> points, String text) {
    public Length {
      points = List.copyOf(points);
    }
  }

  Measuring(Document document, Hub hub, Questions questions) {
    this.document = document;
    this.hub = hub;
    this.questions = questions;
  }

  /** What is measured on a picture now. */
  public Optional<Length> on(PictureId picture) {
    return Optional.ofNullable(length).filter(known -> known.picture().equals(picture));
  }

  void reset() {
    length = null;
  }

  void click(Click click) {
    Length begun = length;
    boolean second =
        begun != null
            && begun.picture().equals(click.picture())
            && begun.points().size() == 1
            && !begun.points().get(0).equals(click.at());
    if (document.laid().picture(click.picture()).filter(Photo.class::isInstance).isEmpty()) {
      hub.say(Notice.Kind.MEASURED_ON_PHOTOS);
    } else if (begun != null && second) {
      between(click.picture(), begun.points().get(0), click.at());
    } else {
      length = new Length(click.picture(), List.of(click.at()), "");
      hub.say(Notice.Kind.MEASURE_SECOND);
    }
    hub.fire(Change.TOOL);
  }

  private void between(PictureId picture, Point a, Point b) {
    Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    Scale known = given.get(picture);
    Optional<PlacedScale> placed =
        known == null ? PlacedScale.near(document.seen(), picture, middle) : Optional.empty();
    length = new Length(picture, List.of(a, b), "");
    if (known != null) {
      told(picture, a, b, known);
      hub.say(Notice.Kind.MEASURED_BY_DISTANCE, text());
    } else if (placed.isPresent()) {
      told(picture, a, b, placed.get().scale());
      String part = document.map().nameOf(placed.get().part());
      hub.say(Notice.Kind.MEASURED_BY_PART, text(), part);
    } else {
      questions.ask(new Question.HowFar(picture, a, b));
    }
  }

  private void told(PictureId picture, Point a, Point b, Scale scale) {
    String millimetres = String.format(Locale.getDefault(), "%.1f mm", scale.distance(a, b));
    length = new Length(picture, List.of(a, b), millimetres);
  }

  private String text() {
    return Optional.ofNullable(length).map(Length::text).orElse("");
  }

  /** From now on the photo's scale, so many pixels to the millimetre. */
  void give(PictureId picture, double pixelsPerMillimetre) {
    given.put(picture, Scale.between(new Point(0, 0), new Point(pixelsPerMillimetre, 0), 1));
  }

  /** The two points are so far apart: from now on the photo's scale. */
  void answer(Question.HowFar question, String millimetres) {
    try {
      double distance = Double.parseDouble(millimetres.strip().replace(',', '.'));
      Scale scale = Scale.between(question.a(), question.b(), distance);
      given.put(question.picture(), scale);
      told(question.picture(), question.a(), question.b(), scale);
      hub.say(Notice.Kind.MEASURED_BY_DISTANCE, text());
    } catch (IllegalArgumentException noDistance) {
      hub.say(Notice.Kind.NO_DISTANCE, millimetres);
    }
    hub.fire(Change.TOOL);
  }
}
