package org.relegend.circuit;

/**
 * What one pin is in one element of its kind.
 *
 * @param number the pin's number; {@link #ANY} where the kind leaves numbers open
 * @param section the section's name; empty where the pin stands outside of any, as supply pins do
 * @param role "base", "out", "V+"
 */
public record Terminal(String number, String section, String role) {
  /** In a pinout: whatever number the part has. */
  public static final String ANY = "*";

  Terminal in(String otherSection) {
    return new Terminal(number, otherSection, role);
  }
}
