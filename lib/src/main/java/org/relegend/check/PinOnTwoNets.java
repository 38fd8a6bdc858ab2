package org.relegend.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** Pins that are on several nets: the nets are one, or a pin was joined by mistake. */
final class PinOnTwoNets implements Check {
  @Override
  public String code() {
    return "pin-on-two-nets";
  }

  /** One finding for all the pins that the same nets share. */
  @Override
  public List<Finding> inspect(CheckContext context) {
    Map<List<NetId>, Set<PinRef>> shared = new LinkedHashMap<>();
    for (Net net : context.map().nets()) {
      for (PinRef pin : net.pins()) {
        List<Net> on = context.index().netsOf(pin);
        if (on.size() > 1) {
          List<NetId> nets = on.stream().map(Net::id).toList();
          shared.computeIfAbsent(nets, ids -> new LinkedHashSet<>()).add(pin);
        }
      }
    }
    List<Finding> findings = new ArrayList<>();
    shared.forEach((nets, pins) -> findings.add(finding(context, nets, List.copyOf(pins))));
    return findings;
  }

  private Finding finding(CheckContext context, List<NetId> nets, List<PinRef> pins) {
    List<Subject> named = nets.stream().map(Subject::of).toList();
    List<Subject> subjects = new ArrayList<>();
    pins.forEach(pin -> subjects.add(Subject.of(pin)));
    String message =
        "%s %s on the nets %s"
            .formatted(
                context.names(subjects),
                CountText.verb(pins.size(), "is", "are"),
                named.stream().map(context.map()::nameOf).collect(Collectors.joining(" and ")));
    subjects.addAll(named);
    return new Finding(
        code(),
        Severity.ERROR,
        subjects,
        message,
        "Join the nets if they are one, or take the pin off the net it isn't on.");
  }
}
