package org.relegend.viewer.mode.straighten;

import org.relegend.map.BoardMap;
import org.relegend.scan.StraightenedPhoto;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.ModeContext;

/** Draws a photo with the board square on, away from the event thread. */
public final class StraightenRunner {
  private final StraightenTool tool;
  private final ModeContext context;

  public StraightenRunner(StraightenTool tool, ModeContext context) {
    this.tool = tool;
    this.context = context;
  }

  /** Begins what is asked for, if anything is. */
  public void follow() {
    tool.wanted().ifPresent(this::draw);
  }

  private void draw(StraightenTool.Wanted wanted) {
    BoardMap map = context.session().map();
    String title = Messages.of("straighten.title", wanted.photo().caption());
    context
        .watch()
        .accept(
            context
                .jobs()
                .run(
                    Messages.of("straighten.working"),
                    watch ->
                        StraightenedPhoto.of(
                            context.shelf().folder(),
                            map,
                            wanted.photo(),
                            wanted.view(),
                            title,
                            wanted.says(),
                            watch::at),
                    made -> {
                      if (context.open().getAsBoolean()) { // else the map is closed
                        tool.drawn(made.edit(), made.picture(), made.view());
                      }
                    },
                    problem -> tool.failed(String.valueOf(problem.getMessage()))));
  }
}
