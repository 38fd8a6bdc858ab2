package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.relegend.bench.Reading;
import org.relegend.map.NetId;
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
              RuleSeverity.ERROR,
              List.of(Subject.of(read.getKey())),
              "%s was read at %s: that is above the limits, and counts as high voltage on this unit from now on, also where a later reading is lower."
                  .formatted(read.getValue().amount().text(4), net),
              "Keep away from %s. Outline a high-voltage zone round its places, and tell the map what it carries. Before any part on it is touched: unplug, discharge, measure."
                  .formatted(net),
              source(),
              List.of()));
    }
    return found;
  }
}
