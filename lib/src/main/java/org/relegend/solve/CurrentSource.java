package org.relegend.solve;

/**
 * A constant current that flows through the device from its first terminal to its second.
 *
 * @param amperes of either sign
 */
public record CurrentSource(double amperes) implements DeviceLaw {
  public CurrentSource {
    if (!Double.isFinite(amperes)) {
      throw new IllegalArgumentException("no current: " + amperes);
    }
  }

  @Override
  public int terminals() {
    return 2;
  }

  @Override
  public void conduct(double[] v, double[] i, double[] g) {
    i[0] = amperes;
    i[1] = -amperes;
    java.util.Arrays.fill(g, 0);
  }

  @Override
  public DeviceLaw withSourcesAt(double fraction) {
    return new CurrentSource(amperes * fraction);
  }
}
