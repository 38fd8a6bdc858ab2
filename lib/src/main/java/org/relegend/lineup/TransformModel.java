package org.relegend.lineup;

/** What a fit may do to a picture, from the plainest to the richest. */
public enum TransformModel {
  /** Moved only. */
  SHIFT(1, 2, "shift"),
  /** Moved and turned: two scans at the same resolution. */
  RIGID(2, 3, "turn and shift"),
  /** Moved, turned and scaled: two photos square on, two scans. */
  SIMILARITY(2, 4, "similarity"),
  /** Also stretched and sheared: a photo from afar. */
  AFFINE(3, 6, "affine fit"),
  /** A flat board seen in perspective. */
  HOMOGRAPHY(4, 8, "perspective fit");

  private final int fewest;
  private final int parameters;
  private final String title;

  TransformModel(int fewest, int parameters, String title) {
    this.fewest = fewest;
    this.parameters = parameters;
    this.title = title;
  }

  /** The fewest pairs that fix it. */
  public int fewest() {
    return fewest;
  }

  /** How many numbers describe it. */
  public int parameters() {
    return parameters;
  }

  /** For a sentence shown to the user. */
  public String title() {
    return title;
  }

  /**
   * The richest model that so many pairs fix.
   *
   * @throws IllegalArgumentException for less than one pair
   */
  public static TransformModel richestFor(int pairs) {
    if (pairs < 1) {
      throw new IllegalArgumentException("no model can be fitted to " + pairs + " pairs");
    }
    return switch (pairs) {
      case 1 -> SHIFT;
      case 2 -> SIMILARITY;
      case 3 -> AFFINE;
      default -> HOMOGRAPHY;
    };
  }
}
