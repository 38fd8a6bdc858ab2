package org.relegend.viewer.mode.twins;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.NodeCard;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SubjectQueries;

/**
 * The photo of one channel on the left and that of the other on the right, at the same spot of
 * both: what the eye is on, and its twin. Either channel keeps its side while one walks on.
 */
public final class ChannelComparison implements Room {
  /** What one side shows: where, unless that isn't known. */
  public record Side(Subject subject, Optional<Spot> spot) {}

  /** A place of a photo. */
  public record Spot(PictureId picture, Point at) {}

  /** Both sides; one is empty where there is no twin. */
  public record Sides(Optional<Side> left, Optional<Side> right) {
    static final Sides NONE = new Sides(Optional.empty(), Optional.empty());
  }

  private final Session session;
  private final ChangeNotifier hub;
  private final NoTwin noTwin;
  private @Nullable String leftChannel;

  public ChannelComparison(Session session) {
    this.session = session;
    this.hub = session.hub();
    this.noTwin = new NoTwin(session, hub);
  }

  public boolean isOn() {
    return session.desk().isComparing();
  }

  /** Begins, or ends, with the page on the left again. */
  public void toggle() {
    hub.check();
    if (isOn()) {
      end();
      return;
    }
    Optional<Subject> focus = session.selection().focus();
    if (focus.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_CHOSEN);
    } else if (session.document().twins().of(focus.get()).isEmpty()) {
      noTwin.say(focus.get());
    } else {
      session.gate().through(session.exposure().of(focus.get()), this::begin);
    }
  }

  private void begin() {
    session.selection().refresh();
    leftChannel = null;
    Sides sides = sides();
    Optional<PictureId> left = picture(sides.left());
    Optional<PictureId> right = picture(sides.right());
    if (left.isEmpty() || right.isEmpty()) {
      Optional<Side> missing = left.isEmpty() ? sides.left() : sides.right();
      hub.say(
          Notice.Kind.NOT_PLACED_YET,
          missing.map(side -> session.map().nameOf(side.subject())).orElse(""));
      return;
    }
    session.rest();
    session.desk().compare(left.get(), right.get());
  }

  private static Optional<PictureId> picture(Optional<Side> side) {
    return side.flatMap(Side::spot).map(Spot::picture);
  }

  /** The page lies on the left again. */
  private void end() {
    if (isOn()) {
      session.desk().unface();
    }
  }

  @Override
  public void modeTaken() {
    end();
  }

  @Override
  public void follow(Change change) {
    if (change == Change.CHOICE || change == Change.CURSOR) {
      refresh();
    }
  }

  /** The eye moved on: lays the photos where it and its twin are. */
  private void refresh() {
    if (isOn()) {
      Sides sides = sides();
      PictureId left = picture(sides.left()).orElse(session.desk().facing().orElseThrow().id());
      PictureId right = picture(sides.right()).orElse(session.desk().photo().orElseThrow().id());
      session.desk().compare(left, right);
    }
  }

  /** What is on which side now. */
  public Sides sides() {
    Optional<NodeCard> card = session.selection().card();
    if (card.isEmpty()) {
      return Sides.NONE;
    }
    Optional<Side> own = Optional.of(side(card.get().subject(), card.get().photo()));
    Optional<Side> other = card.get().twin().map(twin -> side(twin, card.get().twinPhoto()));
    return belongsLeft(card.get()) ? new Sides(own, other) : new Sides(other, own);
  }

  private Side side(Subject subject, Optional<Placement> place) {
    return new Side(
        subject,
        place.map(found -> new Spot(found.picture(), found.at())).or(() -> ghost(subject)));
  }

  /** Where it should lie, if predicted places are shown and their zones' cautions were read. */
  private Optional<Spot> ghost(Subject subject) {
    return session
        .room(PredictedPlaces.class)
        .seen(subject)
        .map(found -> new Spot(found.picture(), found.at()));
  }

  /** The channel that comes first in order is on the left; the first to be shown, of others. */
  private boolean belongsLeft(NodeCard card) {
    String own = channel(card.subject());
    String other = card.twin().map(this::channel).orElse("");
    if (leftChannel == null) {
      leftChannel = other.isEmpty() || own.compareTo(other) <= 0 ? own : other;
    }
    return own.equals(leftChannel) || !other.equals(leftChannel) && own.compareTo(other) <= 0;
  }

  private String channel(Subject subject) {
    return channelOf(session, subject);
  }

  public static String channelOf(Session session, Subject subject) {
    if (subject instanceof Subject.OfNet net) {
      return session.map().net(net.net()).map(Net::channel).orElse("");
    }
    return SubjectQueries.partOf(subject)
        .flatMap(session.map()::part)
        .map(Part::channel)
        .orElse("");
  }
}
