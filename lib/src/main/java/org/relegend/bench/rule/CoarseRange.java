package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.relegend.bench.Reading;
import org.relegend.map.NetId;
import org.relegend.map.Subject;

/** A reading on a range whose last digit is larger than what matters at the node. */
final class CoarseRange implements Rule {
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
  public List<Finding> inspect(Unit unit) {
    List<Finding> found = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      Reading reading = unit.reading(net).orElseThrow();
      Matcher told = RANGE.matcher(reading.setting().words());
      if (told.find()) {
        boolean first = told.group(1) != null;
        double range = Double.parseDouble(first ? told.group(1) : told.group(3));
        boolean milli = !(first ? told.group(2) : told.group(4)).isEmpty();
        double digit = range * (milli ? 1e-3 : 1) / COUNTS;
        if (digit > unit.limit(net)) {
          found.add(finding(unit, net, digit));
        }
      }
    }
    return found;
  }

  private Finding finding(Unit unit, NetId net, double digit) {
    return new Finding(
        code(),
        Severity.WARNING,
        List.of(Subject.of(net)),
        "At %s %s matter, and the range used shows no less than %s."
            .formatted(unit.name(net), Volts.text(unit.limit(net)), Volts.text(digit)),
        "Read it again on a lower range.",
        source(),
        List.of());
  }
}
