package org.relegend.check;

import java.util.List;
import java.util.stream.Stream;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.MapTables;
import org.relegend.map.Mating;
import org.relegend.map.PartId;
import org.relegend.map.Subject;

/** Connectors that are said to be plugged together, of which the map lacks one or both. */
final class MatingOfNothing implements Check {
  @Override
  public String code() {
    return "mating-of-nothing";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().matings().stream()
        .filter(mating -> !absent(context, mating).isEmpty())
        .map(mating -> finding(context, mating))
        .toList();
  }

  private static List<PartId> absent(CheckContext context, Mating mating) {
    return Stream.of(mating.a(), mating.b())
        .filter(part -> !context.map().parts().has(part))
        .toList();
  }

  private Finding finding(CheckContext context, Mating mating) {
    List<Subject> absent = absent(context, mating).stream().map(Subject::of).toList();
    return new Finding(
            code(),
            Severity.WARNING,
            List.of(Subject.of(mating.a()), Subject.of(mating.b())),
            "%s and %s are said to be plugged together, but the map doesn't have %s"
                .formatted(
                    context.map().nameOf(mating.a()),
                    context.map().nameOf(mating.b()),
                    context.names(absent)),
            "Unplug them, or add the connector that is missing.")
        .fixedBy(MapTables.MATINGS.remove(mating));
  }
}
