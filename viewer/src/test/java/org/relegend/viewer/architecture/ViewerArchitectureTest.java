package org.relegend.viewer.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Session;

/** Holds which package of the viewer may know which, and where windows may be opened. */
class ViewerArchitectureTest {
  private static final String ROOT = "org.relegend.viewer.";

  private static final Map<String, Set<String>> MAY_USE =
      Map.of(
          "work", Set.of(),
          "view", Set.of(),
          "tile", Set.of("work", "view"),
          "paint", Set.of("view", "tile"),
          "session", Set.of("work", "view"),
          "control", Set.of("work", "view", "tile", "paint", "session"),
          "mode", Set.of("work", "view", "tile", "paint", "session", "control"),
          "ui", Set.of("work", "view", "tile", "paint", "session", "control", "mode"),
          "command", Set.of(),
          "app", Set.of("work", "view", "tile", "paint", "session", "ui", "command"));

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.relegend.viewer");

  @Test
  void aSensibleNumberOfClassesIsSeen() {
    assertThat(CLASSES.size()).isGreaterThan(10);
  }

  @Test
  void packages_useOnlyWhatTheyMay() {
    Set<String> broken = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      Set<String> allowed = MAY_USE.get(packageOf(type));
      assertThat(allowed)
          .as("package " + type.getPackageName() + " is named in this test")
          .isNotNull();
      type.getDirectDependenciesFromSelf().stream()
          .map(dependency -> dependency.getTargetClass())
          .filter(target -> target.getPackageName().startsWith(ROOT))
          .filter(target -> !packageOf(target).equals(packageOf(type)))
          .filter(target -> !allowed.contains(packageOf(target)))
          .forEach(target -> broken.add(type.getSimpleName() + " -> " + target.getName()));
    }
    assertThat(broken).isEmpty();
  }

  @Test
  void swing_staysInTheWindow() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            ROOT + "ui..", ROOT + "control..", ROOT + "mode..", ROOT + "app..", ROOT + "work..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javax.swing..", "com.formdev..")
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAnyPackage(ROOT + "session..", ROOT + "command..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("java.awt..")
        .check(CLASSES);
  }

  /** A room's model can be tested, and used, where there is no screen. */
  @Test
  void models_ofRoomsKnowNoSwing() {
    noClasses()
        .that()
        .areAssignableTo(Room.class)
        .should()
        .transitivelyDependOnClassesThat()
        .resideInAnyPackage("javax.swing..", "java.awt..", ROOT + "control..")
        .check(CLASSES);
  }

  @Test
  void rooms_standApart() {
    slices().matching(ROOT + "mode.(*)..").should().beFreeOfCycles().check(CLASSES);
    noClasses()
        .that()
        .resideInAPackage(ROOT + "mode.*..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(ROOT + "mode")
        .check(CLASSES);
  }

  /** What depends on the mode stands in its room: nobody else asks which one is current. */
  @Test
  void whichModeIsCurrent_isAskedInRoomsOnly() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "mode.*..")
        .should()
        .callMethod(Session.class, "isIn", Class.class)
        .check(CLASSES);
  }

  @Test
  void standardStreams_areUsedOnlyAtTheTop() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "app..")
        .should(com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS)
        .check(CLASSES);
  }

  private static String packageOf(JavaClass type) {
    String rest = type.getPackageName().substring(ROOT.length());
    int dot = rest.indexOf('.');
    return dot < 0 ? rest : rest.substring(0, dot);
  }
}
