package org.relegend.solve;

import java.util.List;

/**
 * A resistance where none belongs: a short, a leak, a solder bridge.
 *
 * @param a one node
 * @param b the other
 * @param ohms above zero
 */
public record StrayResistance(
    String part, FailureMode mode, String text, String a, String b, double ohms) implements Fault {
  private static final String NAME = "stray resistance";

  @Override
  public Netlist appliedTo(Netlist healthy) {
    return healthy.with(new Device(NAME, part, List.of(a, b), new Resistance(ohms)));
  }
}
