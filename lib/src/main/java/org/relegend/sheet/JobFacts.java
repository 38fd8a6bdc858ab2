package org.relegend.sheet;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.bench.Condition;
import org.relegend.bench.Job;
import org.relegend.bench.LogEntry;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Kind;
import org.relegend.map.BoardMap;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/** What the records say of one job, in words. */
record JobFacts(Job job, Circuit circuit, UnitReadings unit, ZoneId zone) {
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
  private static final int FIGURES = 4;

  /** What a record says while nobody entered such a measurement. */
  static final String NOT_MEASURED =
      "Insulation not measured, nor protective earth: no such measurement was entered for this job.";

  /**
   * A node that was read.
   *
   * @param before as it came; empty where nobody read it then
   * @param after since the last repair; empty where there was none, or nobody read it again
   * @param twin the same node of the other channel, as it is now
   * @param difference how far the latest lies from what it should be, in volts; not always from the
   *     twin, see {@link #comparedWith}
   */
  record Compared(
      NetId net,
      Optional<Reading> before,
      Optional<Reading> after,
      Optional<NetVoltage> twin,
      OptionalDouble difference) {}

  static JobFacts of(Job job, Circuit circuit, ZoneId zone) {
    return new JobFacts(job, circuit, UnitReadings.of(job, circuit), zone);
  }

  BoardMap map() {
    return circuit.map();
  }

  String day(Instant at) {
    return DateTimeFormatter.ISO_LOCAL_DATE.format(at.atZone(zone));
  }

  String minute(Instant at) {
    return MINUTE.format(at.atZone(zone));
  }

  /** Whose clock days and times are told by: "UTC", "UTC+01:00", "Europe/Berlin". */
  String clock() {
    if (!zone.getRules().isFixedOffset()) {
      return zone.getId();
    }
    String offset = zone.getRules().getOffset(Instant.EPOCH).getId();
    return offset.equals("Z") ? "UTC" : "UTC" + offset;
  }

  List<LogEntry> log(LogEntry.Kind kind) {
    return job.log().stream().filter(entry -> entry.kind() == kind).toList();
  }

  /** "R106, U102", or nothing. */
  String names(List<Subject> subjects) {
    return subjects.stream().map(map()::nameOf).collect(Collectors.joining(", "));
  }

  /** Parts that the log names as repaired in this job, each once. */
  Set<PartId> repaired() {
    Set<PartId> parts = new LinkedHashSet<>();
    for (LogEntry entry : log(LogEntry.Kind.REPAIR)) {
      for (Subject subject : entry.about()) {
        if (subject instanceof Subject.OfPart part) {
          parts.add(part.part());
        } else if (subject instanceof Subject.OfPin pin) {
          parts.add(pin.pin().part());
        }
      }
    }
    return parts;
  }

  /** What others had done to the unit, or what had become of it, before this job. */
  List<Condition> foundSo() {
    Set<PartId> ours = repaired();
    return job.conditions().stream()
        .filter(condition -> !ours.contains(condition.part()))
        .filter(condition -> condition.reworked() || isHurt(condition))
        .toList();
  }

  private static boolean isHurt(Condition condition) {
    return condition.is(PartState.DAMAGED) || condition.is(PartState.MISSING);
  }

  /** "C102 (capacitor, 10u 25V)". */
  String described(PartId id) {
    Optional<Part> part = map().part(id);
    String family =
        circuit
            .kindOf(id)
            .map(Kind::family)
            .orElse(part.map(Part::kind).orElse(""))
            .replace('-', ' ');
    String words =
        List.of(family, part.map(Part::value).orElse("")).stream()
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(", "));
    return map().nameOf(id) + (words.isEmpty() ? "" : " (" + words + ")");
  }

  /** Nodes with a voltage: those that differ from what they should be, then the others by size. */
  List<Compared> compared() {
    Map<NetId, Reading> before = new LinkedHashMap<>();
    for (Reading reading : job.readingsAsFound()) {
      voltsAt(reading).ifPresent(net -> before.put(net, reading));
    }
    Set<NetId> nets = new LinkedHashSet<>(before.keySet());
    nets.addAll(unit.netsRead());
    boolean repaired = !log(LogEntry.Kind.REPAIR).isEmpty();
    List<Compared> all = new ArrayList<>();
    for (NetId net : nets) {
      all.add(
          new Compared(
              net,
              Optional.ofNullable(before.get(net)),
              repaired ? unit.reading(net) : Optional.empty(),
              unit.twin(net),
              unit.difference(net)));
    }
    all.sort(
        Comparator.comparing((Compared node) -> !unit.isBad(node.net()))
            .thenComparingDouble(node -> -Math.abs(node.difference().orElse(0))));
    return all;
  }

  private Optional<NetId> voltsAt(Reading reading) {
    return reading.quantity() == Quantity.VOLTAGE ? unit.netOf(reading.at()) : Optional.empty();
  }

  /** Whether the node is as it should be by now, or not, in a word. */
  String verdict(NetId net) {
    return switch (unit.verdict(net)) {
      case GOOD -> "within the limit";
      case BAD -> "differs";
      case UNKNOWN -> "nothing to compare";
    };
  }

  /**
   * What the difference of a node is to: its twin, or the map's voltage where the twin is off it.
   */
  String comparedWith(NetId net) {
    if (unit.difference(net).isEmpty()) {
      return "";
    }
    Optional<NetVoltage> should = unit.healthy(net);
    return should.equals(unit.twin(net))
        ? "the twin"
        : "the map: " + should.map(NetVoltage::text).orElse("");
  }

  static String value(Optional<Reading> reading) {
    return reading.map(found -> text(found.amount())).orElse("not read");
  }

  static String text(Amount amount) {
    return amount.text(FIGURES);
  }

  static String volts(Optional<NetVoltage> volts) {
    return volts.map(NetVoltage::text).orElse("not read");
  }

  static String volts(OptionalDouble volts) {
    return volts.isPresent() ? NetVoltage.text(volts.getAsDouble()) : "";
  }

  /** What the reading was taken with and how, in one line. */
  String setting(Reading reading) {
    List<String> words = new ArrayList<>();
    String against = reading.setting().against();
    if (!against.isEmpty()) {
      words.add("against " + map().nameOf(Subject.of(new NetId(against))));
    }
    if (reading.setting().with().known()) {
      words.add(
          "meter "
              + new Amount(Quantity.RESISTANCE, reading.setting().with().ohms()).text(FIGURES));
    }
    if (reading.setting().power() != MeasurementSetup.Power.UNSTATED) {
      words.add("power " + reading.setting().power().word());
    }
    if (reading.setting().lifted()) {
      words.add("out of circuit");
    }
    words.add(reading.setting().words());
    words.removeIf(String::isEmpty);
    return String.join(", ", words);
  }
}
