package org.relegend.viewer.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every text of the window, as java.text.MessageFormat reads it. */
class MessagesTest {
  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle("org.relegend.viewer.ui.messages");
  private static final Pattern CALL =
      Pattern.compile("Messages\\.of\\(\\s*\"([a-z_.]+)\"\\s*([,)])");

  private static int placeholders(String key) {
    return new MessageFormat(BUNDLE.getString(key)).getFormatsByArgumentIndex().length;
  }

  /** A straight apostrophe would hide the placeholders after it, and be left out itself. */
  @Test
  void noText_hasAStraightApostrophe() {
    assertThat(BUNDLE.keySet()).hasSizeGreaterThan(300);
    assertThat(BUNDLE.keySet())
        .allSatisfy(key -> assertThat(BUNDLE.getString(key)).as(key).doesNotContain("'"));
  }

  @Test
  void allPlaceholders_areFilled() {
    for (String key : BUNDLE.keySet()) {
      Object[] numbers = new Object[placeholders(key)];
      Arrays.fill(numbers, 3);
      assertThat(new MessageFormat(BUNDLE.getString(key)).format(numbers))
          .as(key)
          .doesNotContainPattern("\\{\\d");
    }
  }

  @Test
  void everyCall_givesAsManyArgumentsAsTheTextHasPlaceholders() throws IOException {
    List<String> wrong = new ArrayList<>();
    int calls = 0;
    try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
      for (Path source : sources.filter(path -> path.toString().endsWith(".java")).toList()) {
        String code = Files.readString(source);
        Matcher call = CALL.matcher(code);
        while (call.find()) {
          String key = call.group(1);
          calls++;
          int given = call.group(2).equals(")") ? 0 : arguments(code, call.end());
          if (given != (BUNDLE.containsKey(key) ? placeholders(key) : -1)) {
            wrong.add(source.getFileName() + ": " + key + " is given " + given);
          }
        }
      }
    }
    assertThat(calls).isGreaterThan(200);
    assertThat(wrong).isEmpty();
  }

  /** Commas between the arguments, from the first of them to the bracket that closes the call. */
  private static int arguments(String code, int from) {
    int depth = 0;
    int count = 1;
    boolean quoted = false;
    for (int i = from; depth >= 0; i++) {
      char c = code.charAt(i);
      if (c == '"' && code.charAt(i - 1) != '\\') {
        quoted = !quoted;
      } else if (!quoted) {
        depth += c == '(' || c == '{' ? 1 : c == ')' || c == '}' ? -1 : 0;
        count += c == ',' && depth == 0 ? 1 : 0;
      }
    }
    return count;
  }
}
