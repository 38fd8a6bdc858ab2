package org.relegend.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No string of the product, in any module, says or implies that something holds no danger. */
class WordingTest {
  private static final Path ROOT = Path.of(System.getProperty("relegend.root", ".."));

  private static final Pattern FORBIDDEN =
      Pattern.compile(
          "(?i)\\b(?:un)?safe(?:ly|r|st)?\\b|\\bharmless\\b(?<!not harmless)(?<!work harmless)"
              + "|\\brisk.free\\b|\\b(?:is|are) not dangerous\\b|\\bno danger\\b|\\bnot live\\b"
              + "|\\bdanger.free\\b");

  /** A text block, a string, a character, or a comment: whichever begins first. */
  private static final Pattern TOKEN =
      Pattern.compile(
          "\"\"\"(?<block>.*?)\"\"\"|\"(?<text>(?:\\\\.|[^\"\\\\\\n])*)\"|'(?:\\\\.|[^'\\\\])+'"
              + "|//[^\\n]*|/\\*.*?\\*/",
          Pattern.DOTALL);

  @Test
  void noStringAndNoResource_saysThatSomethingIsWithoutDanger() throws IOException {
    List<String> found = new ArrayList<>();
    int strings = 0;
    for (String module : List.of("lib", "viewer", "demo-data")) {
      Path main = ROOT.resolve(module).resolve("src/main");
      for (Path file : files(main.resolve("java"), ".java")) {
        List<String> literals = literals(Files.readString(file));
        strings += literals.size();
        literals.forEach(text -> judge(file, text, found));
      }
      for (Path file : files(main.resolve("resources"), "")) {
        if (file.toString().matches(".*\\.(txt|csv|json|properties|md|html)")) {
          judge(file, Files.readString(file), found);
        }
      }
    }
    for (String page : List.of("README.md", "lib/docs", "viewer/docs", "demo-data/README.md")) {
      for (Path file : files(ROOT.resolve(page), ".md")) {
        judge(file, Files.readString(file), found);
      }
    }
    assertThat(found).isEmpty();
    assertThat(strings).as("strings seen").isGreaterThan(500);
  }

  @Test
  void theSearch_findsWhatItLooksFor() {
    assertThat(
            literals("/* safe */ a = \"it is safe\"; // \"safe\"\n c = '\"'; d = \"\"\"\nb\"\"\";"))
        .containsExactly("it is safe", "\nb");
    for (String text :
        List.of("This is SAFE now", "safely", "Unsafe", "harmless", "no danger", "not live")) {
      assertThat(FORBIDDEN.matcher(text).find()).as(text).isTrue();
    }
    for (String text : List.of("safety colours", "fail-over", "work harmless")) {
      assertThat(FORBIDDEN.matcher(text).find()).as(text).isFalse();
    }
  }

  private static void judge(Path file, String text, List<String> found) {
    Matcher matcher = FORBIDDEN.matcher(text);
    while (matcher.find()) {
      found.add(ROOT.relativize(file) + ": " + matcher.group());
    }
  }

  private static List<String> literals(String source) {
    List<String> literals = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(source);
    while (matcher.find()) {
      String block = matcher.group("block");
      String text = block == null ? matcher.group("text") : block;
      if (text != null) {
        literals.add(text);
      }
    }
    return literals;
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    if (!Files.exists(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .filter(path -> path.toString().endsWith(ending))
          .toList();
    }
  }
}
