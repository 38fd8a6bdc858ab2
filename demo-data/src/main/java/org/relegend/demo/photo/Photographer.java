package org.relegend.demo.photo;

/** Takes photos: the same shot gives the same pixels on every machine. */
public final class Photographer {
  private Photographer() {}

  public static Photo take(Shot shot) {
    Exposure exposure = Exposure.of(new Stage(shot));
    return new Development(exposure, shot.finish(), shot.seed()).photo();
  }
}
