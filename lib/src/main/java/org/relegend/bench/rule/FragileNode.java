package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.Reading;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.Subject;

/** A reading at a node that the meter itself changes: told, with what was there before. */
final class FragileNode implements ReadingRule {
  @Override
  public String code() {
    return "fragile-node";
  }

  @Override
  public String source() {
    return "a meter reads true within a tenth where it has ten times the node's resistance (SS0602;"
        + " standards reference 7b)";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      Reading reading = unit.reading(net).orElseThrow();
      ProbeLoad loading = ProbeLoad.of(unit, net);
      boolean againstFirm =
          loading.firm().map(NetId::text).equals(Optional.of(reading.setting().against()));
      if (!againstFirm && loading.exact()) {
        loading
            .warning(unit, reading.setting().with())
            .ifPresent(text -> found.add(finding(unit, net, reading, loading, text)));
      }
    }
    return found;
  }

  private RuleFinding finding(
      UnitReadings unit, NetId net, Reading reading, ProbeLoad loading, String text) {
    String corrected =
        loading.ohms().isPresent()
            ? " The %s read stand for some %s untouched."
                .formatted(
                    NetVoltage.text(reading.value()),
                    NetVoltage.text(
                        ProbeLoad.corrected(
                            reading.value(),
                            loading.ohms().getAsDouble(),
                            reading.setting().with().ohms())))
            : "";
    return new RuleFinding(
        code(),
        Severity.WARNING,
        List.of(Subject.of(net)),
        text + corrected,
        "Read it against a net of the same voltage, or with a meter of more resistance, and don't"
            + " take the change for the fault at %s.".formatted(unit.name(net)),
        source(),
        List.of());
  }
}
