package org.relegend.viewer.architecture;

import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Holds that what the documents name is there: classes, members, files and pages linked to. */
class DocumentsTest {
  private static final Path ROOT = Path.of(System.getProperty("relegend.root", ".."));

  private static final Pattern BLOCK = Pattern.compile("(?ms)^```.*?^```");
  private static final Pattern QUOTED = Pattern.compile("`([^`\n]+)`");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:\\s]+)(#[^)]*)?\\)");

  /** Packages in small letters, a class of at least two words, perhaps a member. */
  private static final Pattern TYPE =
      Pattern.compile("(?:[a-z]+\\.)*([A-Z][a-z]+(?:[A-Z][a-z]*)+)(?:\\.(\\w+))?");

  /** A file by its place in the project or by the end of it. */
  private static final Pattern FILE =
      Pattern.compile("(?:lib|viewer|demo-data)/[\\w./-]+|[\\w/-]+/\\w+\\.java");

  /** What is built, and places to be filled in. */
  private static final Pattern OPEN = Pattern.compile(".*(?:/target/|NAME|\\.\\.\\.).*");

  /** A class of the platform and checks of Error Prone, which aren't ours. */
  private static final Set<String> FOREIGN =
      Set.of(
          "StrictMath",
          "MissingSummary",
          "StringSplitter",
          "InlineMeSuggester",
          "UnnecessaryLambda",
          "StringConcatToTextBlock",
          "TypeNameShadowing",
          "OperatorPrecedence",
          "EqualsGetClass");

  private static final List<Path> FILES = files();
  private static final Map<String, List<Path>> SOURCES =
      FILES.stream()
          .filter(file -> file.toString().endsWith(".java"))
          .collect(groupingBy(file -> file.getFileName().toString().replace(".java", "")));

  @Test
  void documentsAndClasses_areSeen() {
    assertThat(documents()).hasSizeGreaterThan(40);
    assertThat(SOURCES).hasSizeGreaterThan(800);
  }

  @Test
  void whatDocumentsName_isThere() {
    List<String> missing = new ArrayList<>();
    for (Path document : documents()) {
      missing(document, text(document)).forEach(name -> missing.add(document + ": " + name));
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void whatIsNotThere_isFound() {
    String text =
        "`ClassNamesTest` `NoSuchThing` `ClassNamesTest.nothing` `ui/Nowhere.java` [a](b)";
    assertThat(missing(ROOT.resolve("README.md"), text))
        .containsExactly("NoSuchThing", "ClassNamesTest.nothing", "ui/Nowhere.java", "b");
  }

  private static List<String> missing(Path document, String text) {
    String plain = BLOCK.matcher(text).replaceAll("");
    List<String> missing = new ArrayList<>();
    Matcher quoted = QUOTED.matcher(plain);
    while (quoted.find()) {
      if (!isThere(quoted.group(1))) {
        missing.add(quoted.group(1));
      }
    }
    Matcher link = LINK.matcher(plain);
    while (link.find()) {
      if (!Files.exists(document.resolveSibling(link.group(1)))) {
        missing.add(link.group(1));
      }
    }
    return missing;
  }

  private static boolean isThere(String name) {
    Matcher type = TYPE.matcher(name);
    if (type.matches()) {
      return FOREIGN.contains(type.group(1)) || isDeclared(type.group(1), type.group(2));
    }
    return !FILE.matcher(name).matches()
        || OPEN.matcher(name).matches()
        || Files.exists(ROOT.resolve(name))
        || FILES.stream().anyMatch(file -> file.endsWith(name));
  }

  private static boolean isDeclared(String type, @Nullable String member) {
    List<Path> sources = SOURCES.getOrDefault(type, List.of());
    return !sources.isEmpty()
        && (member == null
            || sources.stream()
                .anyMatch(source -> text(source).matches("(?s).*\\b" + member + "\\b.*")));
  }

  private static List<Path> documents() {
    return FILES.stream().filter(file -> file.toString().endsWith(".md")).toList();
  }

  /** Those of the project, without what is built. */
  private static List<Path> files() {
    return Stream.of("README.md", "DEVELOPERS.md", "lib", "viewer", "demo-data")
        .flatMap(top -> below(ROOT.resolve(top)).stream())
        .filter(file -> !file.toString().replace('\\', '/').contains("/target/"))
        .toList();
  }

  private static List<Path> below(Path top) {
    try (Stream<Path> all = Files.walk(top)) {
      return all.filter(Files::isRegularFile).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
