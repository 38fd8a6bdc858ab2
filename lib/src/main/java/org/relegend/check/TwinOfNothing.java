package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.MapTables;
import org.relegend.map.TwinPair;

/** Twins of which the map lacks one or both. */
final class TwinOfNothing implements Check {
  @Override
  public String code() {
    return "twin-of-nothing";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().twins().stream()
        .filter(twins -> !context.knows(twins.a()) || !context.knows(twins.b()))
        .map(twins -> finding(context, twins))
        .toList();
  }

  private Finding finding(CheckContext context, TwinPair twins) {
    String a = context.map().nameOf(twins.a());
    String b = context.map().nameOf(twins.b());
    String absent = context.knows(twins.a()) ? b : context.knows(twins.b()) ? a : a + " nor " + b;
    return new Finding(
            code(),
            Severity.WARNING,
            List.of(twins.a(), twins.b()),
            "%s and %s are said to be twins, but the map has no %s".formatted(a, b, absent),
            "Drop the pair, or add what is missing.")
        .fixedBy(MapTables.TWINS.remove(twins.key()));
  }
}
