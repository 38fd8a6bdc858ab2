package org.relegend.demo.photo;

/**
 * What lens and sensor do to the picture.
 *
 * @param blur spread of the lens's blur in pixels of a 4000 pixel wide picture
 * @param shake length of camera shake, likewise, along the picture's diagonal
 * @param glare how strongly a lamp mirrors in the lacquer, 0 not at all, 1 burnt out
 * @param glareX where, in shares of the picture's width
 * @param glareY where, in shares of its height
 * @param grain spread of the sensor's noise at middle grey, 8-bit steps
 * @param vignette how much darker the corners are, 0..1
 * @param exposure factor on all light
 */
public record Finish(
    double blur,
    double shake,
    double glare,
    double glareX,
    double glareY,
    double grain,
    double vignette,
    double exposure) {
  public static final Finish GOOD = new Finish(0.75, 0, 0, 0.5, 0.5, 2.2, 0.18, 1);

  public Finish withBlur(double spread, double shaken) {
    return new Finish(spread, shaken, glare, glareX, glareY, grain, vignette, exposure);
  }

  public Finish withGlare(double strength, double x, double y) {
    return new Finish(blur, shake, strength, x, y, grain, vignette, exposure);
  }

  public Finish withGrain(double spread) {
    return new Finish(blur, shake, glare, glareX, glareY, spread, vignette, exposure);
  }

  public Finish withExposure(double factor) {
    return new Finish(blur, shake, glare, glareX, glareY, grain, vignette, factor);
  }
}
