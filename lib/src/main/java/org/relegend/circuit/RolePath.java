package org.relegend.circuit;

/**
 * A way for current through a kind of part, between roles.
 *
 * @param from a role, or {@link Terminal#ANY}; for a junction the side that current enters
 * @param position the position in which a contact is closed; empty for all else
 */
public record RolePath(String from, String to, Conduction conduction, String position) {
  boolean joins(String a, String b) {
    return is(from, a) && is(to, b);
  }

  /** Whether it leads from any role to any. */
  boolean isOfAll() {
    return from.equals(Terminal.ANY) && to.equals(Terminal.ANY);
  }

  private static boolean is(String pattern, String role) {
    return pattern.equals(Terminal.ANY) || pattern.equals(role);
  }
}
