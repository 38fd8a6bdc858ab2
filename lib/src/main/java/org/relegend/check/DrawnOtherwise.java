package org.relegend.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Net;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** Where the drawing differs from the board as built: worth a look before counting pins on it. */
final class DrawnOtherwise implements Check {
  @Override
  public String code() {
    return "drawn-otherwise";
  }

  /** One finding a part. */
  @Override
  public List<Finding> inspect(CheckContext context) {
    Map<PartId, List<DrawingDiscrepancy>> byPart = new LinkedHashMap<>();
    for (DrawingDiscrepancy discrepancy : context.map().discrepancies()) {
      if (context.knows(discrepancy.subject())) {
        byPart.computeIfAbsent(part(discrepancy), p -> new ArrayList<>(1)).add(discrepancy);
      }
    }
    List<Finding> findings = new ArrayList<>();
    byPart.forEach((part, list) -> findings.add(finding(context, part, list)));
    return findings;
  }

  private static PartId part(DrawingDiscrepancy discrepancy) {
    return discrepancy.subject() instanceof Subject.OfPin pin
        ? pin.pin().part()
        : ((Subject.OfPart) discrepancy.subject()).part();
  }

  private Finding finding(CheckContext context, PartId part, List<DrawingDiscrepancy> list) {
    return new Finding(
        code(),
        Severity.INFORMATION,
        list.stream().map(DrawingDiscrepancy::subject).distinct().toList(),
        "The drawing differs from the board at %s: %s"
            .formatted(
                context.map().nameOf(part),
                list.stream().map(d -> text(context, d)).collect(Collectors.joining("; "))),
        "Follow the copper; look things up in the drawing under its own pins and names.");
  }

  private static String text(CheckContext context, DrawingDiscrepancy discrepancy) {
    if (discrepancy.subject() instanceof Subject.OfPin pin) {
      return "pin %s is drawn on %s and built on %s"
          .formatted(
              pin.pin().pin(), drawnNet(context, discrepancy.drawn()), built(context, pin.pin()));
    }
    return "its %s is drawn as %s".formatted(discrepancy.aspect().word(), orNothing(discrepancy));
  }

  private static String orNothing(DrawingDiscrepancy discrepancy) {
    return discrepancy.drawn().isEmpty() ? "nothing" : discrepancy.drawn();
  }

  private static String drawnNet(CheckContext context, String drawn) {
    return context.map().nets().stream()
        .filter(net -> net.id().text().equals(drawn))
        .findFirst()
        .map(Net::name)
        .orElse(drawn.isEmpty() ? "nothing" : drawn);
  }

  private static String built(CheckContext context, PinRef pin) {
    List<Net> nets = context.index().netsOf(pin);
    return nets.isEmpty()
        ? "nothing known"
        : nets.stream().map(Net::name).collect(Collectors.joining(" and "));
  }
}
