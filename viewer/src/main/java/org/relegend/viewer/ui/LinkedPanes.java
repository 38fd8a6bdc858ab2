package org.relegend.viewer.ui;

import java.util.List;
import java.util.Optional;
import javax.swing.JSplitPane;
import org.relegend.map.Box;
import org.relegend.map.Point;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.mode.twins.ChannelComparison;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * Two photos that move together: the place on the left and its twin on the right stay at the same
 * spot of their panes, at the same zoom, whichever of the two is moved.
 */
final class LinkedPanes {
  private static final ChannelComparison.Sides NOTHING =
      new ChannelComparison.Sides(Optional.empty(), Optional.empty());

  private final Session session;
  private final PicturePane left;
  private final PicturePane right;
  private final JSplitPane split;
  private ChannelComparison.Sides shown = NOTHING;
  private boolean on;
  private boolean moving;
  private int divider;

  LinkedPanes(Session session, PicturePane left, PicturePane right, JSplitPane split) {
    this.session = session;
    this.left = left;
    this.right = right;
    this.split = split;
    left.canvas().onView(view -> follow(left, right));
    right.canvas().onView(view -> follow(right, left));
  }

  /** Takes up whether photos are compared, and what is on which side. */
  void refresh() {
    if (session.room(ChannelComparison.class).isOn() != on) {
      on = !on;
      begunOrEnded();
    }
    if (on) {
      ChannelComparison.Sides now = session.room(ChannelComparison.class).sides();
      name(left, now.left());
      name(right, now.right());
      if (!now.equals(shown) && isLaid(left, now.left()) && isLaid(right, now.right())) {
        boolean first = shown.equals(NOTHING);
        shown = now;
        show(first);
      }
    }
  }

  private void begunOrEnded() {
    if (on) {
      divider = split.getDividerLocation();
      split.setDividerLocation((split.getWidth() - split.getDividerSize()) / 2);
    } else {
      split.setDividerLocation(divider);
      left.about("");
      right.about("");
    }
    shown = NOTHING;
  }

  private void name(PicturePane pane, Optional<ChannelComparison.Side> side) {
    pane.about(side.map(this::words).orElse(Messages.of("card.notwin")));
  }

  private String words(ChannelComparison.Side side) {
    String name = session.map().nameOf(side.subject());
    return side.spot().isPresent() ? name : Messages.of("beside.unplaced", name);
  }

  /** The pictures come one after the other. */
  private static boolean isLaid(PicturePane pane, Optional<ChannelComparison.Side> side) {
    return side.flatMap(ChannelComparison.Side::spot)
        .filter(spot -> !pane.isShown(spot.picture()))
        .isEmpty();
  }

  /** The side that is placed comes into view; the other follows it. */
  private void show(boolean first) {
    PicturePane leads = spot(left).isPresent() ? left : right;
    Optional<Point> at = spot(leads);
    if (at.isPresent() && first) {
      zoomAsBefore(leads.canvas(), at.get());
    } else if (at.isPresent()) {
      leads.canvas().reveal(Box.around(List.of(at.get())));
    }
    follow(leads, leads == left ? right : left);
  }

  /** As near as the photo was seen before; near, where that was whole. */
  private void zoomAsBefore(PictureCanvas canvas, Point at) {
    Optional<ViewState> before = right.canvas().view().filter(view -> !view.isFitted());
    Optional<ViewState> now = canvas.view();
    if (before.isPresent() && now.isPresent()) {
      canvas.setView(
          now.get()
              .withOrientation(before.get().orientation())
              .centredOn(at, before.get().scale()));
    } else {
      canvas.nearTo(Box.around(List.of(at)));
    }
  }

  private Optional<Point> spot(PicturePane pane) {
    return (pane == left ? shown.left() : shown.right())
        .flatMap(ChannelComparison.Side::spot)
        .map(ChannelComparison.Spot::at);
  }

  /** The other pane shows its place where this one shows its own. */
  private void follow(PicturePane moved, PicturePane other) {
    Optional<ViewState> view = moved.canvas().view();
    Optional<ViewState> now = other.canvas().view();
    Optional<Point> from = spot(moved);
    Optional<Point> to = spot(other);
    if (!on || moving || view.isEmpty() || now.isEmpty() || from.isEmpty() || to.isEmpty()) {
      return;
    }
    moving = true;
    try {
      other.canvas().setView(beside(view.get(), from.get(), now.get(), to.get()));
    } finally {
      moving = false;
    }
  }

  /** Both places as far from the middles of their panes. */
  private static ViewState beside(ViewState view, Point from, ViewState now, Point to) {
    ScreenPoint eye = view.toScreen(from);
    ViewState there = now.withOrientation(view.orientation()).centredOn(to, view.scale());
    ScreenPoint place = there.toScreen(to);
    return there.movedBy(
        eye.x() - view.width() / 2.0 - (place.x() - there.width() / 2.0),
        eye.y() - view.height() / 2.0 - (place.y() - there.height() / 2.0));
  }
}
