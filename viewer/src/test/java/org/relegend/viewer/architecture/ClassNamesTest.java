package org.relegend.viewer.architecture;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** Holds that the name of a class says what it is, and stands for one class in both modules. */
class ClassNamesTest {
  /**
   * Nouns of the trade or of plain English that end so; a class of a new name isn't one of them.
   */
  private static final Set<String> NOUNS =
      Set.of(
          "Reading",
          "TypedReading",
          "InformativeReading",
          "NextReading",
          "BandReading",
          "DateReading",
          "ValueReading",
          "Finding",
          "RuleFinding",
          "FitWarning",
          "TokenMeaning",
          "Mating",
          "LineUpRing");

  /** Names of checks, which are sentences: their codes are published. */
  private static final Predicate<JavaClass> CHECK =
      type ->
          type.getPackageName().equals("org.relegend.check")
              && (type.getSimpleName().endsWith("OfNothing")
                  || type.getSimpleName().endsWith("Missing"));

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.relegend");

  @Test
  void bothModules_areSeen() {
    assertThat(topLevel().stream().filter(ClassNamesTest::isViewers).count()).isGreaterThan(150);
    assertThat(topLevel().stream().filter(type -> !isViewers(type)).count()).isGreaterThan(400);
  }

  @Test
  void noSimpleName_standsTwice() {
    Map<String, Set<String>> names =
        topLevel().stream()
            .collect(
                groupingBy(
                    JavaClass::getSimpleName,
                    TreeMap::new,
                    mapping(JavaClass::getName, toCollection(TreeSet::new))));
    assertThat(twice(names)).isEmpty();
  }

  @Test
  void aNameThatStandsTwice_isFound() {
    assertThat(twice(Map.of("Job", Set.of("a.Job", "b.Job"), "Net", Set.of("a.Net"))))
        .containsExactly(Set.of("a.Job", "b.Job"));
  }

  @Test
  void noNestedName_isThatOfAClassOfItsOwnPackage() {
    Set<String> own = new TreeSet<>();
    topLevel().forEach(type -> own.add(type.getPackageName() + "." + type.getSimpleName()));
    assertThat(nested())
        .filteredOn(type -> own.contains(type.getPackageName() + "." + type.getSimpleName()))
        .isEmpty();
  }

  @Test
  void noName_isThatOfAnActivity() {
    List<String> activities =
        topLevel().stream()
            .filter(type -> isActivity(type.getSimpleName()))
            .filter(CHECK.negate())
            .map(JavaClass::getName)
            .toList();
    assertThat(activities).isEmpty();
  }

  @Test
  void anActivity_isToldFromANoun() {
    assertThat(List.of("Keeping", "Typing", "ProbeLoading")).allMatch(ClassNamesTest::isActivity);
    assertThat(List.of("Reading", "RuleFinding", "Net")).noneMatch(ClassNamesTest::isActivity);
  }

  @Test
  void everyNoun_isStillAClass() {
    assertThat(topLevel().stream().map(JavaClass::getSimpleName)).containsAll(NOUNS);
  }

  private static boolean isActivity(String name) {
    return name.endsWith("ing") && !NOUNS.contains(name);
  }

  private static List<Set<String>> twice(Map<String, Set<String>> names) {
    return names.values().stream().filter(types -> types.size() > 1).toList();
  }

  private static boolean isViewers(JavaClass type) {
    return type.getPackageName().startsWith("org.relegend.viewer");
  }

  private static List<JavaClass> topLevel() {
    return CLASSES.stream()
        .filter(JavaClass::isTopLevelClass)
        .filter(type -> !type.getSimpleName().equals("package-info"))
        .filter(type -> !type.getPackageName().startsWith("org.relegend.demo"))
        .toList();
  }

  private static List<JavaClass> nested() {
    return CLASSES.stream()
        .filter(JavaClass::isNestedClass)
        .filter(type -> !type.getSimpleName().isEmpty())
        .filter(type -> !type.getPackageName().startsWith("org.relegend.demo"))
        .toList();
  }
}
