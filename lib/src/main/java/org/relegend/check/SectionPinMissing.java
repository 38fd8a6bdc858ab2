package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Part;
import org.relegend.map.Section;
import org.relegend.map.Subject;

/** Sections that lack a pin which every element of the kind has, or name one that isn't there. */
final class SectionPinMissing implements Check {
  @Override
  public String code() {
    return "section-pin-missing";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Finding> findings = new ArrayList<>();
    for (Part part : context.map().parts()) {
      for (Section section : part.sections()) {
        inspect(context, part, section, findings);
      }
    }
    return findings;
  }

  private void inspect(CheckContext context, Part part, Section section, List<Finding> findings) {
    List<Subject> subject = List.of(new Subject.OfSection(part.id(), section.name()));
    List<String> absent =
        section.roles().keySet().stream().filter(pin -> part.pin(pin).isEmpty()).toList();
    if (!absent.isEmpty()) {
      findings.add(
          new Finding(
              code(),
              Severity.WARNING,
              subject,
              "Section %s of %s names pin %s, which %s doesn't have"
                  .formatted(
                      section.name(),
                      part.designator(),
                      String.join(", ", absent),
                      part.designator()),
              "Add the pin to the part, or take it out of the section."));
    }
    List<String> missing =
        context.kind(part).map(kind -> kind.missingRoles(section)).orElse(List.of());
    if (!missing.isEmpty()) {
      findings.add(
          new Finding(
              code(),
              Severity.INFORMATION,
              subject,
              "Section %s of %s (%s) has no pin for: %s"
                  .formatted(
                      section.name(), part.designator(), part.kind(), String.join(", ", missing)),
              "Add the pin with its role once it is known."));
    }
  }
}
