package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The table of marks: each is read rightly, left open with all its readings, or left unread; none
 * is read wrong without a word. The rows were written from the sources named in them before the
 * code was tried on them.
 */
class MarksTest {
  private static final YearRange YEARS = new YearRange(1950, 1999);

  static List<CSVRecord> rows() {
    try (InputStreamReader table =
        new InputStreamReader(
            Objects.requireNonNull(MarksTest.class.getResourceAsStream("marks.csv")),
            StandardCharsets.UTF_8)) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(table)
          .getRecords();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  static Stream<Arguments> marks() {
    return rows().stream()
        .map(row -> Arguments.of(row.get("mark"), row.get("context"), row.get("expected")));
  }

  @ParameterizedTest(name = "{0} on {1}: {2}")
  @MethodSource("marks")
  void mark_saysWhatItsSourceSays(String mark, String context, String expected) {
    Set<String> wanted = Stream.of(expected.split(" \\| ", -1)).collect(sorted());

    assertThat(text(mark, context)).containsExactlyInAnyOrderElementsOf(wanted);
  }

  /** 400 rows at least, each once and with its source, a fifth of them nonsense or near misses. */
  @Test
  void table_isLargeEnoughAndHasNoRowTwice() {
    List<CSVRecord> rows = rows();
    long unread = rows.stream().filter(row -> row.get("expected").equals("unread")).count();

    assertThat(rows).hasSizeGreaterThanOrEqualTo(400);
    assertThat(rows.stream().map(row -> row.get("mark") + " on " + row.get("context")))
        .doesNotHaveDuplicates();
    assertThat(rows).allSatisfy(row -> assertThat(row.get("source")).isNotBlank());
    assertThat(unread * 5).isGreaterThanOrEqualTo(rows.size());
  }

  private static Set<String> text(String mark, String context) {
    if (context.equals("DATE")) {
      return dates(mark);
    }
    MarkingReadings<ValueReading> answer = read(mark, context);
    if (answer.readings().isEmpty()) {
      assertThat(answer.reason()).isNotBlank();
      return Set.of("unread");
    }
    String before = answer.outcome() == MarkingReadings.Outcome.READ ? "" : "other: ";
    return answer.readings().stream().map(each -> before + text(each)).collect(sorted());
  }

  private static MarkingReadings<ValueReading> read(String mark, String context) {
    Optional<PartClass> part =
        Optional.ofNullable(
            switch (context) {
              case "R" -> PartClass.RESISTOR;
              case "RV" -> PartClass.POTENTIOMETER;
              case "RT" -> PartClass.THERMISTOR;
              case "VDR" -> PartClass.VARISTOR;
              case "C" -> PartClass.CAPACITOR;
              case "L" -> PartClass.INDUCTOR;
              case "F" -> PartClass.FUSE;
              case "D" -> PartClass.DIODE;
              case "U" -> PartClass.REGULATOR;
              case "Y" -> PartClass.CRYSTAL;
              case "DS" -> PartClass.LAMP;
              case "K" -> PartClass.RELAY;
              default -> null;
            });
    return part.map(known -> ComponentValues.read(mark, known))
        .orElseGet(() -> ComponentValues.read(mark));
  }

  /** "4.7 µF ±10 % @ 35 V {code} = sections". */
  private static String text(ValueReading reading) {
    String text = reading.amount().text() + reading.tolerance().map(t -> " " + t.text()).orElse("");
    if (!reading.ratings().isEmpty()) {
      text += " @ " + joined(reading.ratings().stream().map(Amount::text), " ");
    }
    if (!reading.traits().isEmpty()) {
      text += " {" + joined(reading.traits().stream().map(MarkTrait::code), " ") + "}";
    }
    return reading.sections().isEmpty()
        ? text
        : text + " = " + joined(reading.sections().stream().map(MarksTest::section), " + ");
  }

  private static String section(CapacitorSection section) {
    return section.capacitance().text()
        + section.rating().map(volts -> " @ " + volts.text()).orElse("");
  }

  private static Set<String> dates(String mark) {
    MarkingReadings<DateReading> answer = DateCodes.read(mark, YEARS);
    return answer.readings().isEmpty()
        ? Set.of("unread")
        : answer.readings().stream()
            .filter(reading -> reading.scheme() == WeekScheme.ISO_8601)
            .map(MarksTest::date)
            .collect(sorted());
  }

  private static String date(DateReading reading) {
    return reading
        .month()
        .map(month -> String.format(Locale.ROOT, "%d-%02d", reading.year(), month.getValue()))
        .orElseGet(() -> String.format(Locale.ROOT, "%d-W%02d", reading.year(), reading.week()));
  }

  private static String joined(Stream<String> parts, String between) {
    return parts.collect(Collectors.joining(between));
  }

  private static Collector<String, ?, Set<String>> sorted() {
    return Collectors.toCollection(TreeSet::new);
  }
}
