package org.relegend.demo.photo;

/**
 * What the bare board looks like.
 *
 * @param laminate its colour, sRGB {@code 0xRRGGBB}
 * @param seeThrough how plainly the copper shows through from behind, 0..1
 * @param finish what covers the tracks
 * @param resist colour of the solder resist, where the finish has one
 */
public record BoardLook(int laminate, double seeThrough, TrackFinish finish, int resist) {
  /** What covers the tracks. */
  public enum TrackFinish {
    TINNED,
    BARE,
    RESIST
  }

  /** Epoxy glass, tinned tracks. */
  public static final BoardLook EPOXY = new BoardLook(0xA59C6E, 0.45, TrackFinish.TINNED, 0x2F6B3C);

  /** Phenolic paper, lacquered copper. */
  public static final BoardLook PHENOLIC =
      new BoardLook(0x744C2C, 0.12, TrackFinish.BARE, 0x2F6B3C);

  /** Epoxy glass under green resist. */
  public static final BoardLook GREEN = new BoardLook(0x566E48, 0.35, TrackFinish.RESIST, 0x1F5A34);
}
