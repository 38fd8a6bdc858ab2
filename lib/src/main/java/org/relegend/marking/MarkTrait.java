package org.relegend.marking;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * What a marking tells beside value, tolerance and ratings: the law of a potentiometer, the speed
 * of a fuse, the style of a military part.
 *
 * @param what what it is about, as "law" or "fuse characteristic"
 * @param code as written on the part: "A", "T", "RN60"
 * @param meanings what the code stands for; several where that hangs on age, region or maker
 * @param decides what would decide between several meanings; empty where there is one
 */
public record MarkTrait(String what, String code, List<String> meanings, String decides) {
  public MarkTrait {
    requireNonNull(what);
    requireNonNull(code);
    meanings = List.copyOf(meanings);
    if (meanings.isEmpty() || (meanings.size() > 1) == decides.isEmpty()) {
      throw new IllegalArgumentException(
          "several meanings, and only those, need what decides: " + meanings);
    }
  }

  static MarkTrait of(String what, String code, String meaning) {
    return new MarkTrait(what, code, List.of(meaning), "");
  }

  /** For people: "law A: logarithmic (…), or linear (…); half-way resistance decides". */
  public String text() {
    String text = what + " " + code + ": " + String.join(", or ", meanings);
    return decides.isEmpty() ? text : text + "; " + decides;
  }
}
