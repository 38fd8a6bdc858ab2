package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import org.relegend.circuit.Node;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.MainsSign;
import org.relegend.map.Subject;

/** Parts and nets that look like mains by their names, while nothing says that they are. */
final class LooksLikeMains implements Check {
  @Override
  public String code() {
    return "looks-like-mains";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.hazards().signs().stream().map(sign -> finding(context, sign)).toList();
  }

  private Finding finding(CheckContext context, MainsSign sign) {
    List<Subject> subjects = new ArrayList<>(List.of(sign.subject()));
    sign.nodes().stream()
        .map(Node::subject)
        .filter(s -> !subjects.contains(s))
        .forEach(subjects::add);
    return new Finding(
        code(),
        Severity.WARNING,
        subjects,
        "%s looks like mains: it %s".formatted(context.map().nameOf(sign.subject()), sign.sign()),
        "Take it as mains. Give its nets the potential \"mains\" or the part the kind of an inlet;"
            + " if it is something else, give the voltage.");
  }
}
