package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** Nets that join pins which no part has. */
final class NetPinOfNothing implements Check {
  @Override
  public String code() {
    return "net-pin-of-nothing";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Finding> findings = new ArrayList<>();
    for (Net net : context.map().nets()) {
      List<PinRef> absent = net.pins().stream().filter(pin -> !context.knows(pin)).toList();
      if (!absent.isEmpty()) {
        findings.add(finding(context, net, absent));
      }
    }
    return findings;
  }

  private Finding finding(CheckContext context, Net net, List<PinRef> absent) {
    List<Subject> pins = absent.stream().map(Subject::of).toList();
    List<Subject> subjects = new ArrayList<>();
    subjects.add(Subject.of(net.id()));
    subjects.addAll(pins);
    List<Edit> cuts =
        absent.stream().map(pin -> (Edit) new NetEdits.DetachPin(net.id(), pin)).toList();
    return new Finding(
            code(),
            Severity.ERROR,
            subjects,
            "Net %s joins %s, which no part of the map has"
                .formatted(net.name(), context.names(pins)),
            "Add the pin to its part, or take it off the net.")
        .fixedBy(cuts.size() == 1 ? cuts.get(0) : new EditGroup("Take pins off a net", cuts));
  }
}
