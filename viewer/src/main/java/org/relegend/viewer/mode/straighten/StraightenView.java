package org.relegend.viewer.mode.straighten;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.control.QuestionBar;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.paint.PairOverlay;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.Question;

/** The corners of the board as far as they are clicked; asks for its size, then has it drawn. */
public final class StraightenView implements ModeView {
  private final StraightenTool tool;
  private final StraightenRunner runner;

  public StraightenView(StraightenTool tool, ModeContext context) {
    this.tool = tool;
    runner = new StraightenRunner(tool, context);
  }

  @Override
  public boolean hasButton() {
    return false;
  }

  @Override
  public void follow(Change change) {
    if (change == Change.TOOL) {
      runner.follow();
    }
  }

  @Override
  public List<Overlay> overlays(PictureId picture, Optional<Point> pointer) {
    List<PairOverlay.Spot> spots = new ArrayList<>();
    for (Point corner : tool.corners(picture)) {
      String number = Integer.toString(spots.size() + 1);
      spots.add(new PairOverlay.Spot(corner, number, PairOverlay.Look.OPEN, false, 0));
    }
    return spots.isEmpty() ? List.of() : List.of(new PairOverlay(spots));
  }

  @Override
  public boolean ask(Question question, QuestionBar bar) {
    if (question instanceof StraightenTool.HowLarge board) {
      bar.typed("howlarge", Messages.of("question.howlarge"), 12, size -> tool.answer(board, size));
      return true;
    }
    return false;
  }
}
