package org.relegend.viewer.mode.lineup;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.ModeDrag;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.control.PointerPosition;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.paint.PairOverlay;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.Session;

/**
 * Pairs on both pictures, and what they come to below them; loupes are on. What can be lined up
 * without clicks is tried once by itself.
 */
public final class LineUpView implements ModeView {
  private final LineUpTool tool;
  private final Session session;
  private final PairsPanel panel;
  private final LineUpRunner runner;
  private boolean current;
  private boolean byHand;

  public LineUpView(LineUpTool tool, ModeContext context) {
    this.tool = tool;
    session = context.session();
    panel = new PairsPanel(session, context.actions());
    runner = new LineUpRunner(context);
  }

  @Override
  public Optional<JComponent> panel() {
    return Optional.of(panel);
  }

  @Override
  public boolean hasLoupe() {
    return true;
  }

  @Override
  public void follow(Change change) {
    if (change == Change.TOOL) {
      followMode();
    }
    if (change == Change.MAP || change == Change.PICTURES || change == Change.TOOL) {
      panel.refresh();
    }
    if (change == Change.PICTURES) {
      runner.first();
    }
  }

  private void followMode() {
    boolean now = session.isIn(LineUpTool.class);
    if (now && !current && byHand) {
      runner.tried();
    } else if (now && !current) {
      runner.first();
    }
    current = now;
  }

  /** Lines the two photos up without clicks. */
  public void alone() {
    if (!session.isIn(LineUpTool.class)) {
      session.take(tool);
    }
    runner.again();
  }

  /** Lays the two photos side by side for pairs; they were tried without clicks already. */
  public void byHand() {
    if (!session.isIn(LineUpTool.class)) {
      byHand = true;
      session.take(tool);
      byHand = false;
    }
  }

  @Override
  public List<Overlay> overlays(PictureId picture, Optional<Point> pointer) {
    return List.of(new PairMarks(tool, session.document().seen()).on(picture));
  }

  @Override
  public Optional<ModeDrag> drag(PictureId picture, PointerPosition at) {
    return tool.mayKeep()
        ? tool.at(picture, at.at(), at.reach()).map(pair -> new PairDrag(tool, pair, picture))
        : Optional.empty();
  }

  /** A point of a pair that is dragged. */
  private record PairDrag(LineUpTool tool, int pair, PictureId picture) implements ModeDrag {
    @Override
    public List<Overlay> preview(Point to) {
      String number = Integer.toString(pair + 1);
      String off =
          tool.offIfMoved(pair, picture, to)
              .map(pixels -> Messages.of("pairs.dragged", number, Math.round(pixels)))
              .orElse(number);
      return List.of(
          new PairOverlay(List.of(new PairOverlay.Spot(to, off, PairOverlay.Look.HALF, true, 0))));
    }

    @Override
    public void drop(Point to) {
      tool.move(pair, picture, to);
    }
  }
}
