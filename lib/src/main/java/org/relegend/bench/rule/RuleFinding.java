package org.relegend.bench.rule;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Subject;

/**
 * What one rule reads from the readings: a finding, and how it bears on parts.
 *
 * @param finding about nets and parts, its message with figures
 * @param source what the rule rests on: a published text, or "common practice"
 * @param blames how it bears on parts; empty where it only warns
 */
public record RuleFinding(Finding finding, String source, List<LikelihoodRatio> blames) {
  public RuleFinding {
    blames = List.copyOf(blames);
  }

  RuleFinding(
      String code,
      Severity severity,
      List<Subject> subjects,
      String message,
      String remedy,
      String source,
      List<LikelihoodRatio> blames) {
    this(new Finding(code, severity, subjects, message, remedy), source, blames);
  }

  /** The code of the rule. */
  public String code() {
    return finding.code();
  }

  public Severity severity() {
    return finding.severity();
  }

  public List<Subject> subjects() {
    return finding.subjects();
  }

  public String message() {
    return finding.message();
  }

  public String remedy() {
    return finding.remedy();
  }
}
