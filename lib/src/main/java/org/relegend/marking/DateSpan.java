package org.relegend.marking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The days between which a part was made, as far as its code tells. A part was made no earlier than
 * its code; the set it sits in was built later, often by half a year of store time.
 */
public record DateSpan(LocalDate earliest, LocalDate latest) {
  /** Whether one part is later than those around it. */
  public enum Later {
    /** Under every reading of its code. */
    CERTAINLY,
    /** Under some readings. */
    POSSIBLY,
    NO
  }

  public DateSpan {
    if (earliest.isAfter(latest)) {
      throw new IllegalArgumentException("a span cannot run from " + earliest + " to " + latest);
    }
  }

  /** From the first day of the earliest reading to the last of the latest; empty without a day. */
  public static Optional<DateSpan> of(List<DateReading> readings) {
    List<DateSpan> spans = readings.stream().flatMap(each -> each.days().stream()).toList();
    Optional<LocalDate> earliest =
        spans.stream().map(DateSpan::earliest).min(Comparator.naturalOrder());
    Optional<LocalDate> latest =
        spans.stream().map(DateSpan::latest).max(Comparator.naturalOrder());
    return earliest.isEmpty() || latest.isEmpty()
        ? Optional.empty()
        : Optional.of(new DateSpan(earliest.get(), latest.get()));
  }

  /** Whether every day of this span is after every day of the other. */
  public boolean after(DateSpan other) {
    return earliest.isAfter(other.latest);
  }

  /** Whether the two may be of one day. */
  public boolean overlaps(DateSpan other) {
    return !after(other) && !other.after(this);
  }

  /**
   * Tells of each part whether it is later than the rest: later, by more than the margin, than the
   * middle one of all others, so that two renewed parts do not hide each other.
   *
   * @param marginWeeks how far parts of one batch may lie apart; half a year is usual
   * @param <K> what names a part; the result keeps the order of the map
   */
  public static <K> Map<K, Later> laterThanTheRest(Map<K, DateSpan> parts, int marginWeeks) {
    List<LocalDate> earliest = new ArrayList<>();
    List<LocalDate> latest = new ArrayList<>();
    for (DateSpan span : parts.values()) {
      earliest.add(span.earliest);
      latest.add(span.latest);
    }
    Collections.sort(earliest);
    Collections.sort(latest);
    Map<K, Later> result = new LinkedHashMap<>();
    for (Map.Entry<K, DateSpan> part : parts.entrySet()) {
      DateSpan span = part.getValue();
      Later later = Later.NO;
      if (parts.size() > 1) {
        LocalDate surely = middleOfOthers(latest, span.latest).plusWeeks(marginWeeks);
        LocalDate maybe = middleOfOthers(earliest, span.earliest).plusWeeks(marginWeeks);
        if (span.earliest.isAfter(surely)) {
          later = Later.CERTAINLY;
        } else if (span.latest.isAfter(maybe)) {
          later = Later.POSSIBLY;
        }
      }
      result.put(part.getKey(), later);
    }
    return result;
  }

  /**
   * Of the sorted dates without one of them; of an even number the later of the two in the middle.
   */
  private static LocalDate middleOfOthers(List<LocalDate> sorted, LocalDate own) {
    int middle = (sorted.size() - 1) / 2;
    return sorted.get(Collections.binarySearch(sorted, own) <= middle ? middle + 1 : middle);
  }
}
