package org.relegend.bench.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.bench.Condition;
import org.relegend.bench.PartState;
import org.relegend.finding.Severity;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.DateCodes;
import org.relegend.marking.DateSpan;
import org.relegend.marking.YearRange;

/** A date code later than those of the unit's other parts: the part was put in later. */
public final class LaterDate implements ReadingRule {
  /** How far the parts of one batch lie apart: half a year is usual (common practice). */
  private static final int MARGIN_WEEKS = 26;

  @Override
  public String code() {
    return "later-date";
  }

  @Override
  public String source() {
    return "date codes of year and week (EIA-476)";
  }

  /** The parts whose codes are later than the rest's under every reading. */
  public static Map<PartId, DateSpan> later(UnitReadings unit) {
    int thisYear =
        unit.job().conditions().stream()
            .map(condition -> condition.at().toString())
            .mapToInt(at -> Integer.parseInt(at.substring(0, 4)))
            .max()
            .orElse(YearRange.ANY.last());
    YearRange years = YearRange.upTo(Math.min(Math.max(thisYear, 1970), YearRange.ANY.last()));
    Map<PartId, DateSpan> spans = new LinkedHashMap<>();
    for (Condition condition : unit.job().conditions()) {
      DateSpan.of(DateCodes.read(condition.dateCode(), years).readings())
          .ifPresent(span -> spans.put(condition.part(), span));
    }
    Map<PartId, DateSpan> later = new LinkedHashMap<>();
    DateSpan.laterThanTheRest(spans, MARGIN_WEEKS)
        .forEach(
            (part, is) -> {
              if (is == DateSpan.Later.CERTAINLY) {
                later.put(
                    part, spans.getOrDefault(part, new DateSpan(LocalDate.MIN, LocalDate.MAX)));
              }
            });
    return later;
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    later(unit)
        .forEach(
            (part, span) -> {
              Condition condition = unit.job().condition(part).orElseThrow();
              if (!condition.is(PartState.REPLACED)) {
                found.add(finding(unit, part, condition, span));
              }
            });
    return found;
  }

  private RuleFinding finding(UnitReadings unit, PartId part, Condition condition, DateSpan span) {
    return new RuleFinding(
        code(),
        Severity.WARNING,
        List.of(Subject.of(part)),
        "%s has the date code %s, made %s or later, and the unit's other parts are older: it was put in later."
            .formatted(unit.name(part), condition.dateCode(), span.earliest()),
        "Mark it as replaced, or look at the code again.",
        source(),
        List.of(
            new LikelihoodRatio(
                part, LikelihoodRatio.WEAK, "dated later than the unit's other parts")));
  }
}
