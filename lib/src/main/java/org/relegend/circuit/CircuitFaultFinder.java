package org.relegend.circuit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** Finds what no circuit can have. */
final class CircuitFaultFinder {
  private CircuitFaultFinder() {}

  static List<CircuitFault> faults(PinFacts facts) {
    List<CircuitFault> faults = new ArrayList<>();
    Set<PinRef> seen = new LinkedHashSet<>();
    for (Net net : facts.map().nets()) {
      for (Net.Member member : net.members()) {
        if (seen.add(member.pin())) {
          check(facts, net, member.pin(), faults);
        }
      }
    }
    for (Mating mating : facts.map().matings()) {
      for (PartId part : List.of(mating.a(), mating.b())) {
        if (facts.part(part).isEmpty()) {
          PartId mate = part.equals(mating.a()) ? mating.b() : mating.a();
          faults.add(
              new CircuitFault(
                  CircuitFault.Sort.MATED_WITH_NOTHING,
                  List.of(Subject.of(part), Subject.of(mate)),
                  "%s is plugged into %s, which the map hasn't got".formatted(mate, part)));
        }
      }
    }
    return faults;
  }

  private static void check(PinFacts facts, Net net, PinRef pin, List<CircuitFault> faults) {
    if (facts.part(pin.part()).isEmpty()) {
      faults.add(
          new CircuitFault(
              CircuitFault.Sort.NO_SUCH_PART,
              List.of(Subject.of(pin), Subject.of(net.id())),
              "net %s has pin %s, but the map has no part %s"
                  .formatted(net.id(), pin, pin.part())));
    } else if (!facts.has(pin)) {
      faults.add(
          new CircuitFault(
              CircuitFault.Sort.NO_SUCH_PIN,
              List.of(Subject.of(pin), Subject.of(net.id())),
              "net %s has pin %s, but part %s has no pin %s"
                  .formatted(net.id(), pin, pin.part(), pin.pin())));
    }
    List<Net> nets = facts.index().netsOf(pin);
    if (nets.size() > 1) {
      List<Subject> subjects = new ArrayList<>();
      subjects.add(Subject.of(pin));
      nets.forEach(other -> subjects.add(Subject.of(other.id())));
      faults.add(
          new CircuitFault(
              CircuitFault.Sort.PIN_ON_SEVERAL_NETS,
              subjects,
              "pin %s stands on %s"
                  .formatted(
                      pin,
                      nets.stream()
                          .map(other -> other.id().text())
                          .collect(Collectors.joining(" and ")))));
    }
  }
}
