package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.circuit.ClassLetters;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/** Designators whose letters stand for no known class of part. */
final class DesignatorClassUnknown implements Check {
  @Override
  public String code() {
    return "designator-class-unknown";
  }

  /**
   * One finding for all parts of the same letters: old drawings have letters of their own, so this
   * is nothing more than a hint at a slip.
   */
  @Override
  public List<Finding> inspect(CheckContext context) {
    Map<String, List<Subject>> unknown = new TreeMap<>();
    for (Part part : context.map().parts()) {
      String letters = ClassLetters.of(part.designator()).orElse("");
      if (letters.isEmpty() || ClassLetters.meanings(letters).isEmpty()) {
        unknown.computeIfAbsent(letters, l -> new ArrayList<>()).add(Subject.of(part.id()));
      }
    }
    List<Finding> findings = new ArrayList<>();
    unknown.forEach((letters, parts) -> findings.add(finding(context, letters, parts)));
    return findings;
  }

  private Finding finding(CheckContext context, String letters, List<Subject> parts) {
    String why =
        letters.isEmpty()
            ? "no designator of class letters and a number"
            : "the letters %s stand for no known class of part".formatted(letters);
    return new Finding(
        code(),
        Severity.INFORMATION,
        parts,
        "%s: %s".formatted(context.names(parts), why),
        "Correct it if it is a slip; else leave it as the drawing has it.");
  }
}
