package org.relegend.viewer.mode.straighten;

import org.relegend.map.BoardMap;
import org.relegend.scan.StraightPhoto;
import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.Texts;

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
    String title = Texts.of("straighten.title", wanted.photo().caption());
    context
        .watch()
        .accept(
            context
                .jobs()
                .run(
                    Texts.of("straighten.working"),
                    watch ->
                        StraightPhoto.of(
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
