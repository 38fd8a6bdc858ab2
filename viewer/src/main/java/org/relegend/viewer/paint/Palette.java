package org.relegend.viewer.paint;

import java.awt.Color;

/**
 * The colours that carry meaning. The first eight are the set of M. Okabe and K. Ito, "Color
 * Universal Design" (2002, revised 2008), https://jfly.uni-koeln.de/color/, which people with
 * colour-vision deficiency can tell apart; the last two are those of ISO 3864-4 for warnings.
 */
public final class Palette {
  public static final Color BLACK = new Color(0x000000);
  public static final Color ORANGE = new Color(0xE69F00);
  public static final Color SKY_BLUE = new Color(0x56B4E9);
  public static final Color BLUISH_GREEN = new Color(0x009E73);
  public static final Color YELLOW = new Color(0xF0E442);
  public static final Color BLUE = new Color(0x0072B2);
  public static final Color VERMILLION = new Color(0xD55E00);
  public static final Color REDDISH_PURPLE = new Color(0xCC79A7);

  public static final Color WARNING_YELLOW = new Color(0xF9A800);
  public static final Color WARNING_BLACK = new Color(0x000000);

  /** Behind labels, and what is written on it. */
  public static final Color PLATE = new Color(0xFFFFFF);

  public static final Color PLATE_TEXT = new Color(0x000000);

  private Palette() {}
}
