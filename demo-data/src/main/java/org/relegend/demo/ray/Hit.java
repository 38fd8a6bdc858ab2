package org.relegend.demo.ray;

/** Where a line met a body; one object a thread, overwritten by each trace. */
public final class Hit {
  /** The body met; meaningless unless the trace returned true. */
  public Solid solid = Solid.NOTHING;

  public double t;
  public double x;
  public double y;
  public double z;
  public double nx;
  public double ny;
  public double nz;

  double enter;
  double leave;
  int enterFace;
  int face;
}
