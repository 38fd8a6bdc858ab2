package org.relegend.hazard;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A voltage above the limits that the name of a net tells, by figure or by word (common practice).
 */
record HighVoltageName(VoltageLimits limits) {
  private static final Set<String> WORDS =
      Set.of("ht", "h.t.", "ht1", "ht2", "eht", "hv", "b+", "b++");

  /** With one of these a net is about the voltage, not on it. */
  private static final Set<String> ABOUT =
      Set.of("ok", "en", "on", "fail", "fault", "led", "gnd", "pwm");

  private static final Pattern FIGURE =
      Pattern.compile("(?:^|[^a-z0-9.])[+-]?(\\d+(?:\\.\\d+)?)\\s*(k?)v(?![a-z0-9]*\\d)");

  private static final Pattern AT_ELECTRODE =
      Pattern.compile("(?:plate|anode|screen|ht|b\\+)[\\s_]*\\+?(\\d+)(?![a-z0-9])()");

  /** Why the net is taken as high; empty where its name tells nothing of the kind. */
  Optional<String> reason(String name) {
    String text = name.toLowerCase(Locale.ROOT).strip();
    List<String> words = List.of(text.split("[\\s_/:()-]+"));
    boolean high =
        words.stream().anyMatch(word -> WORDS.contains(word) || WORDS.contains(stem(word)));
    boolean told = high || isHigh(FIGURE.matcher(text)) || isHigh(AT_ELECTRODE.matcher(text));
    return told && words.stream().noneMatch(ABOUT::contains)
        ? Optional.of("its name tells a high voltage, and nothing else tells how much")
        : Optional.empty();
  }

  private static String stem(String word) {
    return word.replaceFirst("\\+$", "");
  }

  private boolean isHigh(Matcher found) {
    return found
        .results()
        .anyMatch(
            m ->
                limits.isHighDc(
                    Double.parseDouble(m.group(1)) * (m.group(2).isEmpty() ? 1 : 1000)));
  }
}
