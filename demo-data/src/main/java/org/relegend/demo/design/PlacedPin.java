package org.relegend.demo.design;

/**
 * One pin: the net the copper joins it to, the net the drawing shows, and the middle of its pad.
 */
public record PlacedPin(
    String part, String pin, String role, String builtNet, String drawnNet, Spot at) {
  /** The pin's name as tables write it, {@code U102.6}. */
  public String name() {
    return part + "." + pin;
  }
}
