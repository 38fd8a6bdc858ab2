package org.relegend.demo.ray;

/** A uniform look: colour in linear light 0..1, roughness 0 (mirror) to 1 (chalk), metal or not. */
public record Paint(double red, double green, double blue, double roughness, boolean metal)
    implements Skin {
  /** From an sRGB colour {@code 0xRRGGBB}. */
  public static Paint of(int rgb, double roughness) {
    return new Paint(
        Light.linear(rgb >> 16 & 255),
        Light.linear(rgb >> 8 & 255),
        Light.linear(rgb & 255),
        roughness,
        false);
  }

  public static Paint metal(int rgb, double roughness) {
    Paint paint = of(rgb, roughness);
    return new Paint(paint.red, paint.green, paint.blue, roughness, true);
  }

  public Paint darker(double factor) {
    return new Paint(red * factor, green * factor, blue * factor, roughness, metal);
  }

  @Override
  public void paint(Hit hit, Surface surface) {
    surface.set(this);
  }
}
