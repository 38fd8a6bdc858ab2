package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.rule.Amplifiers.Amp;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.Subject;

/**
 * An amplifier in a closed loop that isn't at its limits holds its inputs equal. If they are, it
 * does its work; if they aren't, it or its loop doesn't.
 */
final class InputsEqual implements ReadingRule {
  @Override
  public String code() {
    return "inputs-equal";
  }

  @Override
  public String source() {
    return "university circuit-debugging notes: inputs of an op amp in feedback equal within mV";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (Amp amp : Amplifiers.all(unit)) {
      CircuitElement element = amp.element();
      if (amp.rail() != 0 || !Amplifiers.loopDrawn(unit, element)) {
        continue;
      }
      Optional<NetId> out = element.net("out");
      if (amp.unequal()) {
        found.add(unequal(amp));
      } else if (out.map(unit::isBad).orElse(false)) {
        found.add(excused(amp));
      }
    }
    return found;
  }

  private RuleFinding unequal(Amp amp) {
    CircuitElement element = amp.element();
    String message =
        "%s is not at a limit, and its inputs are %s apart: its loop doesn't close, or it doesn't amplify."
            .formatted(element.name(), NetVoltage.text(Math.abs(amp.between())));
    return new RuleFinding(
        code(),
        Severity.ERROR,
        List.of(Subject.of(element.part())),
        message,
        "Read supply and inputs again at the pins themselves, then look at the feedback part and its"
            + " joints.",
        source(),
        List.of(
            new LikelihoodRatio(
                element.part(),
                LikelihoodRatio.MEDIUM,
                "its inputs differ by %s though its output is not at a limit"
                    .formatted(NetVoltage.text(Math.abs(amp.between()))))));
  }

  private RuleFinding excused(Amp amp) {
    CircuitElement element = amp.element();
    String reason = "holds its inputs equal, so it does its work";
    return new RuleFinding(
        code(),
        Severity.INFORMATION,
        List.of(Subject.of(element.part())),
        "%s %s: its output follows from what it is given.".formatted(element.name(), reason),
        "Look at what sets its inputs.",
        source(),
        List.of(new LikelihoodRatio(element.part(), LikelihoodRatio.EXCUSED, reason)));
  }
}
