package org.relegend.demo.design;

import java.util.Set;

/** The copper round a pin, in millimetres. */
public final class Pads {
  private static final Set<String> HEAVY =
      Set.of("mains-terminal", "fuse", "switch-dpst", "transformer", "cap-mains", "resistor-mains");
  private static final Set<String> DIP = Set.of("npn-array", "dual-opamp");

  private Pads() {}

  /** Radius of a pin's pad. */
  public static double radius(Design design, PlacedPin pin) {
    String kind = design.part(pin.part()).kind();
    return HEAVY.contains(kind) ? 1.5 : DIP.contains(kind) ? 0.95 : 1.1;
  }
}
