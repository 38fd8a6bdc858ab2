package org.relegend.viewer.mode.place;

import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.ModeView;

/** The name to be placed is typed at the top. */
public final class PlaceView implements ModeView {
  public PlaceView(PlaceTool tool, ModeContext context) {}

  @Override
  public String hint() {
    return "find.place.hint";
  }
}
