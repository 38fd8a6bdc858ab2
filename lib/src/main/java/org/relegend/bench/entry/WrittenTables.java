package org.relegend.bench.entry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.bench.Condition;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.NodeLimit;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.map.BoardMap;
import org.relegend.map.NetId;
import org.relegend.map.Subject;
import org.relegend.marking.Waveform;
import org.relegend.table.TableRows;

/** Readings and conditions of a job as tables that {@link JobTables} reads again. */
public final class WrittenTables {
  private static final List<String> CONDITIONS =
      List.of("part", "condition", "date_code", "note", "value");
  private static final List<String> READINGS =
      List.of("at", "quantity", "value", "unit", "conditions");

  private WrittenTables() {}

  /** Conditions, in the order of the job. */
  public static String conditions(Job job, BoardMap map) {
    TableRows rows = new TableRows(CONDITIONS);
    for (Condition condition : job.conditions()) {
      rows.row(
          map.nameOf(condition.part()),
          condition.states().stream().map(PartState::word).collect(Collectors.joining(" + ")),
          condition.dateCode(),
          condition.note(),
          condition.fitted());
    }
    return rows.text();
  }

  /** Readings, in the order they were taken; the limit of a node with the first one there. */
  public static String readings(Job job, BoardMap map) {
    TableRows rows = new TableRows(READINGS);
    Set<Subject> limited = new HashSet<>();
    for (Reading reading : job.readings()) {
      List<String> words = words(reading, map);
      job.limits()
          .find(reading.at())
          .filter(limit -> limited.add(limit.at()))
          .ifPresent(limit -> words.add(limit(limit)));
      rows.row(
          map.nameOf(reading.at()),
          quantity(reading),
          BigDecimal.valueOf(reading.value()).toPlainString(),
          reading.quantity().unit(),
          String.join("; ", words));
    }
    return rows.text();
  }

  private static String quantity(Reading reading) {
    Waveform waveform = reading.amount().waveform();
    String label = reading.quantity().label();
    return switch (waveform) {
      case AC -> "ac " + label;
      case DC -> "dc " + label;
      default -> label;
    };
  }

  private static List<String> words(Reading reading, BoardMap map) {
    MeasurementSetup setting = reading.setting();
    List<String> words = new ArrayList<>();
    if (setting.power() != MeasurementSetup.Power.UNSTATED) {
      words.add("power " + setting.power().word());
    }
    if (!setting.against().isEmpty()) {
      words.add("against " + map.nameOf(Subject.of(new NetId(setting.against()))));
    }
    if (setting.with().known()) {
      words.add(instrument(setting.with()));
    }
    if (setting.lifted()) {
      words.add("lifted");
    }
    if (!setting.words().isEmpty()) {
      words.add(setting.words());
    }
    return words;
  }

  private static String instrument(Instrument with) {
    boolean probe = with.farads() > 0 && (with.ohms() == 10e6 || with.ohms() == 1e6);
    return probe
        ? "x%s probe %sp".formatted(with.ohms() == 10e6 ? "10" : "1", plain(with.farads() * 1e12))
        : "meter " + plain(with.ohms());
  }

  private static String limit(NodeLimit limit) {
    return limit.volts() > 0
        ? "limit %s V".formatted(plain(limit.volts()))
        : "limit %s %%".formatted(plain(100 * limit.fraction()));
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
