package org.relegend.map;

import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reading of the few fixed words a document is written with. */
public final class FixedWords {
  private FixedWords() {}

  /**
   * The value with this word, in capitals or not.
   *
   * @param what what is looked for, for the message: "kind of hazard"
   * @throws IllegalArgumentException where there is none
   */
  public static <T> T find(T[] all, Function<T, String> word, String what, String text) {
    for (T candidate : all) {
      if (word.apply(candidate).equalsIgnoreCase(text.strip())) {
        return candidate;
      }
    }
    throw new IllegalArgumentException(
        "\"%s\" is no %s: it is one of %s"
            .formatted(
                NameRules.printable(text),
                what,
                Arrays.stream(all).map(word).collect(Collectors.joining(", "))));
  }
}
