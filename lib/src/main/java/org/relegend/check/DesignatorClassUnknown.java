package org.relegend.check;

import java.util.List;
import org.relegend.circuit.ClassLetters;
import org.relegend.map.Designator;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/** Designators whose letters stand for no known class of part. */
final class DesignatorClassUnknown implements Check {
  @Override
  public String code() {
    return "designator-class-unknown";
  }

  /** Old drawings have letters of their own, so this is nothing more than a hint at a slip. */
  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().parts().stream()
        .filter(part -> !isKnown(part.designator()))
        .map(this::finding)
        .toList();
  }

  private static boolean isKnown(Designator designator) {
    return ClassLetters.of(designator).filter(s -> !ClassLetters.meanings(s).isEmpty()).isPresent();
  }

  private Finding finding(Part part) {
    String why =
        ClassLetters.of(part.designator())
            .map("the letters %s stand for no known class of part"::formatted)
            .orElse("it isn't made of class letters and a number");
    return new Finding(
        code(),
        Severity.INFORMATION,
        List.of(Subject.of(part.id())),
        "%s: %s".formatted(part.designator(), why),
        "Correct it if it is a slip; else leave it as the drawing has it.");
  }
}
