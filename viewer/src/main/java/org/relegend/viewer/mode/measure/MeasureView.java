package org.relegend.viewer.mode.measure;

import java.util.List;
import java.util.Optional;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.control.QuestionBar;
import org.relegend.viewer.paint.LengthOverlay;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.session.Question;

/** The length that is measured, with its figure; asks for it where nothing tells the scale. */
public final class MeasureView implements ModeView {
  private final MeasureTool tool;

  public MeasureView(MeasureTool tool, ModeContext context) {
    this.tool = tool;
  }

  @Override
  public List<Overlay> overlays(PictureId picture, Optional<Point> pointer) {
    return tool.on(picture).stream()
        .<Overlay>map(length -> new LengthOverlay(length.points(), length.text()))
        .toList();
  }

  @Override
  public boolean ask(Question question, QuestionBar bar) {
    if (question instanceof MeasureTool.HowFar far) {
      bar.typed(
          "howfar", Messages.of("question.howfar"), 8, distance -> tool.answer(far, distance));
      return true;
    }
    return false;
  }
}
