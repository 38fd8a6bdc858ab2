package org.relegend.viewer.mode.look;

import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.ModeView;

/** Looking needs nothing but what is always shown. */
public final class LookView implements ModeView {
  public LookView(LookTool tool, ModeContext context) {}
}
