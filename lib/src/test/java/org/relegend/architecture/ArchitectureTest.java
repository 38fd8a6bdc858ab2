package org.relegend.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds which package may know which, and where each library may be used. */
class ArchitectureTest {
  private static final String ROOT = "org.relegend.";

  /** What each package of ours may use of the others; a package not named here may not exist. */
  private static final Map<String, Set<String>> MAY_USE =
      Map.ofEntries(
          Map.entry("map", Set.of()),
          Map.entry("marking", Set.of("map")),
          Map.entry("finding", Set.of("map")),
          Map.entry("lineup", Set.of("map")),
          Map.entry("store", Set.of("map", "marking", "lineup", "bench")),
          Map.entry("circuit", Set.of("map", "marking")),
          Map.entry("solve", Set.of("map", "marking", "circuit")),
          Map.entry("scan", Set.of("map", "marking", "circuit", "lineup", "store")),
          Map.entry("table", Set.of("map", "marking", "circuit")),
          Map.entry("twin", Set.of("map", "marking", "circuit", "lineup")),
          Map.entry("hazard", Set.of("map", "marking", "circuit", "lineup")),
          Map.entry(
              "bench",
              Set.of(
                  "map", "marking", "finding", "circuit", "solve", "table", "twin", "lineup",
                  "hazard")),
          Map.entry(
              "check", Set.of("map", "marking", "finding", "circuit", "twin", "lineup", "hazard")),
          Map.entry("share", Set.of("map", "store", "lineup", "scan", "hazard")),
          Map.entry(
              "sheet",
              Set.of(
                  "map", "marking", "finding", "circuit", "twin", "lineup", "hazard", "bench",
                  "scan", "store")));

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.relegend");

  @Test
  void aSensibleNumberOfClassesIsSeen() {
    assertThat(CLASSES.size()).isGreaterThan(50);
  }

  @Test
  void packages_useOnlyWhatTheyMay() {
    Set<String> broken = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      String from = packageOf(type);
      Set<String> allowed = MAY_USE.get(from);
      assertThat(allowed)
          .as("package " + type.getPackageName() + " is named in this test")
          .isNotNull();
      type.getDirectDependenciesFromSelf().stream()
          .map(dependency -> dependency.getTargetClass())
          .filter(target -> target.getPackageName().startsWith(ROOT))
          .filter(target -> !packageOf(target).equals(from))
          .filter(target -> !allowed.contains(packageOf(target)))
          .forEach(target -> broken.add(type.getSimpleName() + " -> " + target.getName()));
    }
    assertThat(broken).isEmpty();
  }

  @Test
  void packages_haveNoCycles() {
    slices().matching("org.relegend.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void libraries_areUsedOnlyWhereTheyBelong() {
    onlyIn("com.fasterxml.jackson..", "store");
    onlyIn("org.jgrapht..", "circuit", "twin", "bench");
    onlyIn("org.apache.pdfbox..", "scan", "sheet");
    onlyIn("org.ejml..", "lineup", "hazard", "solve");
    onlyIn("org.hipparchus..", "solve");
    onlyIn("boofcv..", "lineup");
    onlyIn("org.apache.commons.csv..", "table", "circuit", "lineup");
    onlyIn("com.drew..", "scan");
    onlyIn("java.awt..", "scan", "sheet", "lineup");
  }

  @Test
  void noSwing_noStandardStreams_noGenericExceptions_noLoggers() {
    noClasses().should().dependOnClassesThat().resideInAPackage("javax.swing..").check(CLASSES);
    GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(CLASSES);
    GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS.check(CLASSES);
    GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING.check(CLASSES);
  }

  @Test
  void everyPackage_isNullMarkedAndTellsItsPurpose() {
    List<String> bare = new ArrayList<>();
    Set<String> packages =
        CLASSES.stream().map(JavaClass::getPackageName).collect(Collectors.toSet());
    for (String name : packages) {
      boolean marked =
          CLASSES
              .getPackage(name)
              .tryGetAnnotationOfType("org.jspecify.annotations.NullMarked")
              .isPresent();
      if (!marked) {
        bare.add(name);
      }
    }
    assertThat(bare).isEmpty();
  }

  private static void onlyIn(String library, String... packages) {
    String[] allowed = Stream.of(packages).map(name -> ROOT + name + "..").toArray(String[]::new);
    noClasses()
        .that()
        .resideOutsideOfPackages(allowed)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(CLASSES);
  }

  private static String packageOf(JavaClass type) {
    String rest = type.getPackageName().substring(ROOT.length());
    int dot = rest.indexOf('.');
    return dot < 0 ? rest : rest.substring(0, dot);
  }
}
