package org.relegend.viewer.mode.straighten;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.relegend.lineup.Rectification;
import org.relegend.map.Attestation;
import org.relegend.map.EditGroup;
import org.relegend.map.Evidence;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.viewer.mode.measure.MeasureTool;
import org.relegend.viewer.session.Attester;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Click;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.QuestionQueue;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.ShownPictures;
import org.relegend.viewer.session.Target;

/**
 * Straightening a photo: the four corners of the board are clicked in any order, its size is typed,
 * and a further photo is drawn with the board square on. The drawing itself takes a while; who does
 * it takes what is {@link #wanted} and gives it back as {@link #drawn}.
 */
public final class StraightenTool implements Mode {
  /** The four corners of the board are clicked: how wide and high is it? */
  public record HowLarge(PictureId picture, List<Point> corners) implements Question {
    public HowLarge {
      corners = List.copyOf(corners);
    }
  }

  private static final Pattern SIZE =
      Pattern.compile("([\\d.,]+)\\s*(?:[xX\u00d7*]|mm|\\s)+\\s*([\\d.,]+)\\s*(?:mm)?");

  private final Session session;
  private final MapDocument document;
  private final ShownPictures desk;
  private final Attester hand;
  private final ChangeNotifier hub;
  private final QuestionQueue questions;
  private final MeasureTool measuring;
  private final List<Point> corners = new ArrayList<>();
  private @Nullable PictureId picture;
  private @Nullable Wanted wanted;

  /** A photo that is to be drawn anew. */
  public record Wanted(Photo photo, Rectification view, Attestation says) {}

  public StraightenTool(Session session) {
    this.session = session;
    this.measuring = session.room(MeasureTool.class);
    this.document = session.document();
    this.desk = session.desk();
    this.hand = session.hand();
    this.hub = session.hub();
    this.questions = session.questions();
  }

  @Override
  public String word() {
    return "straighten";
  }

  @Override
  public Optional<Notice.Kind> prompt() {
    return Optional.of(Notice.Kind.CORNERS_FIRST);
  }

  @Override
  public void click(Target target) {
    session.gate().through(target.around(), () -> click(target.click()));
  }

  /** Tells false where nothing can be added to the map. */
  @Override
  public boolean begin() {
    if (document.isReadOnly()) {
      hub.say(Notice.Kind.READ_ONLY);
      return false;
    }
    return true;
  }

  @Override
  public void drop() {
    picture = null;
    corners.clear();
  }

  /** The corners set so far on a picture. */
  public List<Point> corners(PictureId on) {
    return on.equals(picture) ? List.copyOf(corners) : List.of();
  }

  private void click(Click click) {
    if (photo(click.picture()).isEmpty()) {
      hub.say(Notice.Kind.STRAIGHTENED_PHOTOS);
      return;
    }
    if (!click.picture().equals(picture) || corners.size() == 4) {
      drop();
      picture = click.picture();
    }
    if (!corners.contains(click.at())) {
      corners.add(click.at());
    }
    if (corners.size() == 4) {
      questions.ask(new HowLarge(click.picture(), corners));
    } else {
      hub.say(Notice.Kind.CORNER, corners.size());
    }
    hub.fire(Change.TOOL);
  }

  private Optional<Photo> photo(PictureId id) {
    return document.map().picture(id).filter(Photo.class::isInstance).map(Photo.class::cast);
  }

  /** Takes the last corner back; tells whether there was one. */
  @Override
  public boolean back() {
    if (corners.isEmpty()) {
      return false;
    }
    corners.remove(corners.size() - 1);
    hub.fire(Change.TOOL);
    return true;
  }

  /** The size of the board in millimetres, such as {@code 250 x 162}; asked again if it is none. */
  public void answer(HowLarge question, String size) {
    questions.answered();
    Optional<Photo> photo = photo(question.picture());
    Matcher both = SIZE.matcher(size.strip());
    if (photo.isEmpty()) {
      return;
    }
    try {
      if (!both.matches()) {
        throw new IllegalArgumentException("\"%s\": 250 x 162, for one".formatted(size));
      }
      Rectification view = Rectification.of(question.corners(), length(both, 1), length(both, 2));
      wanted = new Wanted(photo.get(), view, hand.attests(Evidence.SEEN));
      drop();
    } catch (IllegalArgumentException unfit) {
      hub.say(Notice.Kind.NO_SIZE, String.valueOf(unfit.getMessage()));
      questions.ask(question);
    }
    hub.fire(Change.TOOL);
  }

  private static double length(Matcher both, int which) {
    return Double.parseDouble(both.group(which).replace(',', '.'));
  }

  /** What is to be drawn; it is told once. */
  public Optional<Wanted> wanted() {
    Optional<Wanted> asked = Optional.ofNullable(wanted);
    wanted = null;
    return asked;
  }

  /** It was drawn: puts it into the map and shows it. */
  public void drawn(EditGroup edit, PictureId made, Rectification view) {
    hub.check();
    if (document.apply(edit)) {
      desk.show(made);
      measuring.give(made, view.pixelsPerMillimetre());
      hub.say(Notice.Kind.STRAIGHTENED, made);
    }
  }

  /** It could not be drawn. */
  public void failed(String why) {
    hub.say(Notice.Kind.NOT_STRAIGHTENED, why);
  }
}
