package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Subject;

/** Nets with a single pin: traced half, or a name that was typed in two ways. */
final class OnePinNet implements Check {
  @Override
  public String code() {
    return "one-pin-net";
  }

  /** One finding for all of them, since a map that is still growing has many. */
  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Subject> nets =
        context.map().nets().stream()
            .filter(net -> net.members().size() == 1)
            .map(net -> Subject.of(net.id()))
            .toList();
    if (nets.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Finding(
            code(),
            Severity.INFORMATION,
            nets,
            "%s %s just one pin: %s"
                .formatted(
                    CountText.count(nets.size(), "net"),
                    CountText.verb(nets.size(), "has", "have"),
                    context.names(nets)),
            "Trace on when you come to it; where the net is whole, look for its other pins under a"
                + " name that is spelt otherwise."));
  }
}
