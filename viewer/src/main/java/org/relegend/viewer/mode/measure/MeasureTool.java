package org.relegend.viewer.mode.measure;

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
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Click;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.QuestionQueue;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Target;

/**
 * Measuring on a photo in millimetres, between two clicks. The scale is told by a distance that the
 * technician gave for that photo, else by the pins of the nearest package placed there; where there
 * is neither, the distance of the two points is asked for.
 */
public final class MeasureTool implements Mode {
  /** Two points of a photo of unknown scale: how far apart are they? */
  public record HowFar(PictureId picture, Point a, Point b) implements Question {}

  private final Session session;
  private final MapDocument document;
  private final ChangeNotifier hub;
  private final QuestionQueue questions;
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

  public MeasureTool(Session session) {
    this.session = session;
    this.document = session.document();
    this.hub = session.hub();
    this.questions = session.questions();
  }

  @Override
  public String word() {
    return "measure";
  }

  @Override
  public Optional<Notice.Kind> prompt() {
    return Optional.of(Notice.Kind.PROMPT_MEASURE);
  }

  @Override
  public void click(Target target) {
    session.gate().through(target.around(), () -> click(target.click()));
  }

  /** What is measured on a picture now. */
  public Optional<Length> on(PictureId picture) {
    return Optional.ofNullable(length).filter(known -> known.picture().equals(picture));
  }

  @Override
  public void drop() {
    length = null;
  }

  private void click(Click click) {
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
      setLength(picture, a, b, known);
      hub.say(Notice.Kind.MEASURED_BY_DISTANCE, text());
    } else if (placed.isPresent()) {
      setLength(picture, a, b, placed.get().scale());
      String part = document.map().nameOf(placed.get().part());
      hub.say(Notice.Kind.MEASURED_BY_PART, text(), part);
    } else {
      questions.ask(new HowFar(picture, a, b));
    }
  }

  private void setLength(PictureId picture, Point a, Point b, Scale scale) {
    String millimetres = String.format(Locale.getDefault(), "%.1f mm", scale.distance(a, b));
    length = new Length(picture, List.of(a, b), millimetres);
  }

  private String text() {
    return Optional.ofNullable(length).map(Length::text).orElse("");
  }

  /** From now on the photo's scale, so many pixels to the millimetre. */
  public void give(PictureId picture, double pixelsPerMillimetre) {
    given.put(picture, Scale.between(new Point(0, 0), new Point(pixelsPerMillimetre, 0), 1));
  }

  /** The two points are so far apart: from now on the photo's scale. */
  public void answer(HowFar question, String millimetres) {
    questions.answered();
    try {
      double distance = Double.parseDouble(millimetres.strip().replace(',', '.'));
      Scale scale = Scale.between(question.a(), question.b(), distance);
      given.put(question.picture(), scale);
      setLength(question.picture(), question.a(), question.b(), scale);
      hub.say(Notice.Kind.MEASURED_BY_DISTANCE, text());
    } catch (IllegalArgumentException noDistance) {
      hub.say(Notice.Kind.NO_DISTANCE, millimetres);
    }
    hub.fire(Change.TOOL);
  }
}
