package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.bench.Reading;
import org.relegend.finding.Severity;
import org.relegend.hazard.Hazards;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * What was read above the limits can hurt, whatever the map says; it stays so for this unit, and
 * the place asks for a hazard zone.
 */
final class VoltageAboveLimits implements ReadingRule {
  @Override
  public String code() {
    return "high-voltage-read";
  }

  @Override
  public String source() {
    return "IEC 61010-1, clause 6.3.1: 30 V rms, 60 V direct";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (Map.Entry<NetId, Reading> read : unit.hazards().readHigh().entrySet()) {
      String net = unit.name(read.getKey());
      found.add(
          new RuleFinding(
              code(),
              Severity.ERROR,
              List.of(Subject.of(read.getKey())),
              "%s was read at %s: that is above the limits, and counts as high voltage on this unit from now on, also where a later reading is lower."
                  .formatted(read.getValue().amount().text(4), net),
              "Keep away from %s.%s Tell the map what it carries. Before any part on it is touched: unplug, discharge, measure."
                  .formatted(net, zone(unit, read.getKey())),
              source(),
              List.of()));
    }
    return found;
  }

  /** Where the zone is to be drawn: its pins and their bodies that lie in none. */
  private static String zone(UnitReadings unit, NetId net) {
    Hazards hazards = unit.hazards().hazards();
    Set<PinRef> pins = new LinkedHashSet<>(unit.map().net(net).orElseThrow().pins());
    String places =
        hazards.unmarked().stream()
            .filter(danger -> isOf(pins, danger.subject()))
            .map(
                danger ->
                    String.format(
                        Locale.ROOT,
                        "%s on %s at %.0f,%.0f",
                        danger.text(unit.map().nameOf(danger.subject())),
                        danger.picture(),
                        danger.at().x(),
                        danger.at().y()))
            .collect(Collectors.joining("; "));
    String unplaced =
        hazards.unplaced().stream()
            .filter(pins::contains)
            .map(pin -> unit.map().nameOf(Subject.of(pin)))
            .collect(Collectors.joining(", "));
    return (places.isEmpty() ? "" : " Outline a high-voltage zone round " + places + ".")
        + (unplaced.isEmpty()
            ? ""
            : " On no photo yet: %s; place them, and outline a zone round them."
                .formatted(unplaced));
  }

  private static boolean isOf(Set<PinRef> pins, Subject subject) {
    return subject instanceof Subject.OfPin pin
        ? pins.contains(pin.pin())
        : subject instanceof Subject.OfPart part
            && pins.stream().anyMatch(pin -> pin.part().equals(part.part()));
  }
}
