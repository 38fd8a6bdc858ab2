package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.circuit.Kind;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Attestation;
import org.relegend.map.Evidence;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.Quantity;
import org.relegend.marking.ValueReading;

/**
 * Pins that are known to be on a net by a beep alone, where a part of few ohms leads from that net
 * to another: a continuity beeper sounds below 10 to 40 ohms, some up to 100 (common practice), so
 * that the beep may have come through the part.
 */
final class BeepedOnly implements Check {
  /** Above this no beeper sounds. */
  private static final double MOST_OHMS = 100;

  private static final Set<String> COILS = Set.of("inductor", "coil", "fuse", "switch", "relay");

  @Override
  public String code() {
    return "beeped-only";
  }

  /** One finding for all nets, since whoever traces by beeper has many. */
  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Subject> nets = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (Net net : context.map().nets()) {
      List<Part> through = through(context, net);
      List<PinRef> doubtful = beeped(net, through);
      if (!doubtful.isEmpty() && !through.isEmpty()) {
        nets.add(Subject.of(net.id()));
        lines.add(
            "%s (%s; past %s)"
                .formatted(
                    context.map().nameOf(Subject.of(net.id())),
                    context.names(doubtful.stream().map(Subject::of).toList()),
                    context.names(through.stream().map(Part::id).map(Subject::of).toList())));
      }
    }
    if (nets.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Finding(
            code(),
            Severity.INFORMATION,
            nets,
            "At %s a beep alone tells that pins are joined, and a part of few ohms leads elsewhere: %s"
                .formatted(
                    CountText.count(nets.size(), "net"),
                    lines.stream().limit(CheckContext.LISTED).collect(Collectors.joining(", "))),
            "A beeper sounds through such a part too: with the plug pulled and stored charge gone read"
                + " the ohms between the pins. Copper reads less than half an ohm."));
  }

  /** Those whose best evidence is a beep; the parts' own pins are what one beeps against. */
  private static List<PinRef> beeped(Net net, List<Part> through) {
    Set<Object> own = through.stream().map(Part::id).collect(Collectors.toSet());
    return net.members().stream()
        .filter(member -> Attestation.best(member.evidence()).equals(Optional.of(Evidence.BEEPED)))
        .map(Net.Member::pin)
        .filter(pin -> !own.contains(pin.part()))
        .toList();
  }

  /** Parts of two pins and few ohms that lead from the net to another. */
  private static List<Part> through(CheckContext context, Net net) {
    return net.pins().stream()
        .flatMap(pin -> context.map().part(pin.part()).stream())
        .distinct()
        .filter(part -> part.pins().size() == 2 && isLow(context, part))
        .filter(part -> leadsElsewhere(context, part, net))
        .toList();
  }

  private static boolean isLow(CheckContext context, Part part) {
    Optional<Kind> kind = context.kind(part);
    if (kind.isEmpty() || !kind.get().family().equals("resistor")) {
      return kind.filter(known -> COILS.contains(known.family())).isPresent();
    }
    MarkingReadings<ValueReading> value = KindValues.read(context, part);
    return value.outcome() == MarkingReadings.Outcome.READ
        && value
            .first()
            .map(ValueReading::amount)
            .filter(amount -> amount.quantity() == Quantity.RESISTANCE)
            .map(Amount::value)
            .filter(ohms -> ohms <= MOST_OHMS)
            .isPresent();
  }

  private static boolean leadsElsewhere(CheckContext context, Part part, Net net) {
    return part.pins().stream()
        .flatMap(pin -> context.index().netsOf(part.ref(pin)).stream())
        .anyMatch(other -> !other.id().equals(net.id()));
  }
}
