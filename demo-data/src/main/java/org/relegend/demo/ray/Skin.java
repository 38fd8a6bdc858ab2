package org.relegend.demo.ray;

/** What a body looks like at a point of its surface. */
@FunctionalInterface
public interface Skin {
  /** Fills in the surface at the hit; the hit's normal may be read, the surface's be changed. */
  void paint(Hit hit, Surface surface);
}
