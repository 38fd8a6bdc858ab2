package org.relegend.viewer.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Files of one package that can only be read together, since each needs all others: the strongly
 * connected components of more than one file. A few are natural, as a thing and its parts. Read
 * from the sources, since compiled classes no longer know where their constants came from.
 */
class FileCirclesTest {
  /** The largest circle there may be, in files. */
  private static final int LARGEST = 5;

  private static final Pattern NO_CODE =
      Pattern.compile("/\\*.*?\\*/|//[^\n]*|\"(?:\\\\.|[^\"\\\\\n])*\"", Pattern.DOTALL);
  private static final Pattern NAME = Pattern.compile("(?<![\\w.])[A-Z]\\w*");

  @Test
  void circles_areSmall() throws IOException {
    Map<Path, List<Set<String>>> circles = new TreeMap<>();
    for (Map.Entry<Path, Map<String, Set<String>>> folder : files().entrySet()) {
      circles.put(folder.getKey(), circlesOf(folder.getValue()));
    }
    assertThat(circles).hasSizeGreaterThan(10);
    List<String> large = new ArrayList<>();
    circles.forEach(
        (name, found) ->
            found.stream()
                .filter(circle -> circle.size() > LARGEST)
                .forEach(circle -> large.add(name + ": " + circle)));
    assertThat(large).isEmpty();
  }

  @Test
  void aCircle_isFound_andALineIsNone() {
    Map<String, Set<String>> uses =
        Map.of("a", Set.of("b"), "b", Set.of("c"), "c", Set.of("a", "d"), "d", Set.of());
    assertThat(circlesOf(uses)).containsExactly(Set.of("a", "b", "c"));
    assertThat(circlesOf(Map.of("a", Set.of("b"), "b", Set.of()))).isEmpty();
  }

  /** For each package which file of it names which other ones of it. */
  private static Map<Path, Map<String, Set<String>>> files() throws IOException {
    Map<Path, Map<String, Set<String>>> folders = new TreeMap<>();
    try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
      for (Path source : sources.filter(path -> path.toString().endsWith(".java")).toList()) {
        String name = source.getFileName().toString().replace(".java", "");
        if (!name.equals("package-info")) {
          folders
              .computeIfAbsent(source.getParent(), folder -> new TreeMap<>())
              .put(name, names(Files.readString(source), name));
        }
      }
    }
    return folders;
  }

  private static Set<String> names(String source, String own) {
    Matcher name = NAME.matcher(NO_CODE.matcher(source).replaceAll(" "));
    Set<String> found = new TreeSet<>();
    while (name.find()) {
      found.add(name.group());
    }
    found.remove(own);
    return found;
  }

  /** Files that reach each other, by a plain search from each: packages are small. */
  private static List<Set<String>> circlesOf(Map<String, Set<String>> uses) {
    Map<String, Set<String>> reached =
        uses.keySet().stream().collect(Collectors.toMap(file -> file, file -> from(file, uses)));
    Set<Set<String>> circles = new LinkedHashSet<>();
    for (String file : new TreeSet<>(uses.keySet())) {
      Set<String> circle =
          reached.get(file).stream()
              .filter(other -> reached.getOrDefault(other, Set.of()).contains(file))
              .collect(Collectors.toCollection(TreeSet::new));
      if (circle.size() > 1) {
        circles.add(circle);
      }
    }
    return List.copyOf(circles);
  }

  private static Set<String> from(String file, Map<String, Set<String>> uses) {
    Set<String> found = new TreeSet<>();
    Deque<String> waiting = new ArrayDeque<>(List.of(file));
    while (!waiting.isEmpty()) {
      for (String next : uses.getOrDefault(waiting.poll(), Set.of())) {
        if (uses.containsKey(next) && found.add(next)) {
          waiting.add(next);
        }
      }
    }
    return found;
  }
}
