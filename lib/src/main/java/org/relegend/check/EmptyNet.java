package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.MapTables;
import org.relegend.map.Subject;

/** Nets that join nothing. */
final class EmptyNet implements Check {
  @Override
  public String code() {
    return "empty-net";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().nets().stream()
        .filter(net -> net.members().isEmpty())
        .map(
            net ->
                new Finding(
                        code(),
                        Severity.INFORMATION,
                        List.of(Subject.of(net.id())),
                        "Net %s has no pins".formatted(net.name()),
                        "Join pins to it, or remove it.")
                    .fixedBy(MapTables.NETS.remove(net.id())))
        .toList();
  }
}
