package org.relegend.demo.ray;

/** A point or direction in space, millimetres. */
public record Vec(double x, double y, double z) {
  public Vec plus(Vec other) {
    return new Vec(x + other.x, y + other.y, z + other.z);
  }

  public Vec minus(Vec other) {
    return new Vec(x - other.x, y - other.y, z - other.z);
  }

  public Vec times(double factor) {
    return new Vec(x * factor, y * factor, z * factor);
  }

  public double dot(Vec other) {
    return x * other.x + y * other.y + z * other.z;
  }

  public Vec cross(Vec other) {
    return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  public Vec unit() {
    return times(1 / length());
  }
}
