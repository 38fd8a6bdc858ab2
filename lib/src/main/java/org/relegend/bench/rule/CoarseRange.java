package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.relegend.bench.Reading;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.Subject;

/** A reading on a range whose last digit is larger than what matters at the node. */
final class CoarseRange implements ReadingRule {
  /** Three and a half digits. */
  private static final double COUNTS = 2000;

  private static final Pattern RANGE =
      Pattern.compile(
          "(?i)(?:range\\s+([0-9]+(?:\\.[0-9]+)?)\\s*(m?)V|([0-9]+(?:\\.[0-9]+)?)\\s*(m?)V\\s+range)");

  @Override
  public String code() {
    return "coarse-range";
  }

  @Override
  public String source() {
    return "a meter of 3\u00bd digits shows a two-thousandth of its range (common practice)";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      Reading reading = unit.reading(net).orElseThrow();
      Matcher result = RANGE.matcher(reading.setting().words());
      if (result.find()) {
        boolean first = result.group(1) != null;
        double range = Double.parseDouble(first ? result.group(1) : result.group(3));
        boolean milli = !(first ? result.group(2) : result.group(4)).isEmpty();
        double digit = range * (milli ? 1e-3 : 1) / COUNTS;
        if (digit > unit.limit(net)) {
          found.add(finding(unit, net, digit));
        }
      }
    }
    return found;
  }

  private RuleFinding finding(UnitReadings unit, NetId net, double digit) {
    return new RuleFinding(
        code(),
        Severity.WARNING,
        List.of(Subject.of(net)),
        "At %s %s matter, and the range used shows no less than %s."
            .formatted(unit.name(net), NetVoltage.text(unit.limit(net)), NetVoltage.text(digit)),
        "Read it again on a lower range.",
        source(),
        List.of());
  }
}
