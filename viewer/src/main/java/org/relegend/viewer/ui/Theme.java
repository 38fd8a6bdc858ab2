package org.relegend.viewer.ui;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.util.Map;
import javax.swing.UIManager;
import javax.swing.UnsupportedLookAndFeelException;

/** Light or dark, or whichever the system has. */
public enum Theme {
  SYSTEM,
  LIGHT,
  DARK;

  /** Points that read at arm's length; a system with larger fonts keeps them. */
  private static final int LEAST_FONT = 14;

  /**
   * Dresses all windows in it; on the event thread.
   *
   * @param systemIsDark what {@link #SYSTEM} stands for
   */
  void apply(boolean systemIsDark) {
    boolean dark = this == DARK || this == SYSTEM && systemIsDark;
    if (FlatLaf.isLafDark() == dark && UIManager.getLookAndFeel() instanceof FlatLaf) {
      return;
    }
    FlatLaf look = dark ? new FlatDarkLaf() : new FlatLightLaf();
    int system = new javax.swing.JLabel().getFont().getSize();
    FlatLaf.setGlobalExtraDefaults(
        Map.of(
            "defaultFont",
            "" + Math.max(LEAST_FONT, system),
            "@accentColor",
            dark ? "#56B4E9" : "#0072B2",
            "Component.focusWidth",
            "1",
            "ScrollBar.showButtons",
            "false"));
    try {
      UIManager.setLookAndFeel(look);
    } catch (UnsupportedLookAndFeelException impossible) {
      throw new IllegalStateException("FlatLaf runs wherever Swing does", impossible);
    }
    FlatLaf.updateUI();
  }
}
