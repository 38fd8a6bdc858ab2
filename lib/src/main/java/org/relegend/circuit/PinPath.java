package org.relegend.circuit;

/**
 * A way for current through one part, between two of its pins.
 *
 * @param from for a junction the pin that current enters
 * @param position the position in which a contact is closed; empty for all else
 */
public record PinPath(String from, String to, Conduction conduction, String position) {
  /** Whether it begins or ends at this pin. */
  public boolean touches(String pin) {
    return from.equals(pin) || to.equals(pin);
  }

  PinPath turned() {
    return new PinPath(to, from, conduction, position);
  }

  /**
   * The end that isn't this pin.
   *
   * @throws IllegalArgumentException where the pin is at neither end
   */
  public String other(String pin) {
    if (!touches(pin)) {
      throw new IllegalArgumentException("pin %s isn't on %s".formatted(pin, this));
    }
    return from.equals(pin) ? to : from;
  }
}
