package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.NameRules;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/** Kinds that the table of kinds doesn't have, so that nothing can be told from them. */
final class KindUnknown implements Check {
  @Override
  public String code() {
    return "kind-unknown";
  }

  /** One finding for all parts of one such kind; a part whose kind nobody told has none. */
  @Override
  public List<Finding> inspect(CheckContext context) {
    Map<String, List<Subject>> unknown = new TreeMap<>(NameRules.NATURAL);
    for (Part part : context.map().parts()) {
      if (!part.kind().isEmpty() && context.kind(part).isEmpty()) {
        unknown.computeIfAbsent(part.kind(), k -> new ArrayList<>()).add(Subject.of(part.id()));
      }
    }
    List<Finding> findings = new ArrayList<>();
    unknown.forEach((kind, parts) -> findings.add(finding(context, kind, parts)));
    return findings;
  }

  private Finding finding(CheckContext context, String kind, List<Subject> parts) {
    return new Finding(
        code(),
        Severity.INFORMATION,
        parts,
        "The kind \"%s\" is not one that is known: %s".formatted(kind, context.names(parts)),
        "Correct it if it is a slip; else add the kind to a table of kinds.");
  }
}
