package org.relegend.bench.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.bench.Condition;
import org.relegend.bench.DemoUnit;
import org.relegend.bench.EntryId;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.JobSamples;
import org.relegend.bench.JobTable;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.NodeLimit;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.circuit.Circuit;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;
import org.relegend.marking.Waveform;
import org.relegend.table.TableSource;

/** Written and read again, a job's tables give the same readings, limits and conditions. */
class WrittenTablesTest {
  private static final Circuit CIRCUIT = DemoUnit.circuit();
  private static final List<Instrument> INSTRUMENTS =
      List.of(
          new Instrument("", 10e6, 0),
          new Instrument("x10 probe 15p", 10e6, 15e-12),
          new Instrument("", 200e3, 0),
          new Instrument("", 11.1e6, 0));

  private static <T> T any(List<T> all, Random random) {
    return all.get(random.nextInt(all.size()));
  }

  private static Reading reading(int number, Random random) {
    boolean volts = random.nextBoolean();
    Subject at =
        volts
            ? Subject.parse(List.of("net:A_ATT", "net:A_C1", "U102.7").get(random.nextInt(3)))
            : Subject.parse("R106");
    Amount amount =
        volts
            ? new Amount(
                Quantity.VOLTAGE,
                Math.rint(random.nextGaussian() * 1e4) / 1e5,
                any(List.of(Waveform.values()), random))
            : new Amount(Quantity.RESISTANCE, random.nextInt(100_000));
    MeasurementSetup setting =
        new MeasurementSetup(
            random.nextBoolean() ? "VN" : "",
            INSTRUMENTS.get(random.nextInt(INSTRUMENTS.size())),
            any(List.of(MeasurementSetup.Power.values()), random),
            !volts && random.nextBoolean(),
            random.nextBoolean() ? "no signal" : "");
    return new Reading(new EntryId(number), at, amount, setting, "", JobSamples.NOON);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void readings_areReadAgainAsTheyWere(long seed) throws Exception {
    Random random = new Random(seed);
    List<Reading> readings = new ArrayList<>();
    while (readings.size() < 25) {
      Reading next = reading(readings.size() + 1, random);
      boolean there = // a table that says the same twice is taken once
          readings.stream()
              .anyMatch(
                  other ->
                      other.at().equals(next.at())
                          && other.amount().equals(next.amount())
                          && other.setting().equals(next.setting()));
      if (!there) {
        readings.add(next);
      }
    }
    readings.add(
        new Reading(
            new EntryId(26),
            Subject.parse("net:A_VB1"),
            new Amount(Quantity.VOLTAGE, 0.101),
            MeasurementSetup.with(Instrument.DIGITAL_METER),
            "",
            JobSamples.NOON));
    NodeLimit limit = new NodeLimit(Subject.parse("net:A_VB1"), 0, 0.005);
    Job job =
        JobSamples.blank()
            .with(JobTable.READINGS, Table.of(readings))
            .with(JobTable.LIMITS, Table.of(List.of(limit)));
    String text = WrittenTables.readings(job, CIRCUIT.map());
    Job again =
        JobTables.readings(
                JobSamples.blank(),
                CIRCUIT,
                new TableSource(
                    "readings.csv", text.getBytes(java.nio.charset.StandardCharsets.UTF_8)),
                "",
                JobSamples.NOON)
            .edit()
            .applyTo(JobSamples.blank());
    assertThat(again.readings()).hasSameSizeAs(job.readings());
    for (int i = 0; i < readings.size(); i++) {
      Reading read = again.readings().at(i);
      assertThat(read.at()).isEqualTo(readings.get(i).at());
      assertThat(read.amount()).isEqualTo(readings.get(i).amount());
      MeasurementSetup was = readings.get(i).setting();
      assertThat(read.setting().with().ohms()).isEqualTo(was.with().ohms());
      assertThat(read.setting().with().farads()).isEqualTo(was.with().farads());
      assertThat(read.setting().alike(was)).as(text).isTrue();
    }
    assertThat(again.limits()).isEqualTo(job.limits());
  }

  @Test
  void conditions_areReadAgainAsTheyWere_withQuotesAndLineBreaks() throws Exception {
    List<Condition> conditions =
        List.of(
            new Condition(
                new PartId("C102"),
                EnumSet.of(PartState.REPLACED, PartState.SOCKETED),
                "10u 50V",
                "9114",
                "\"why\" only here, in B?\nnobody knows",
                List.of(),
                "",
                JobSamples.NOON),
            new Condition(
                new PartId("U101"),
                EnumSet.of(PartState.RESOLDERED, PartState.DAMAGED),
                "",
                "7829",
                "",
                List.of(),
                "",
                JobSamples.NOON));
    Job job = JobSamples.blank().with(JobTable.CONDITIONS, Table.of(conditions));
    String text = WrittenTables.conditions(job, CIRCUIT.map());
    Job again =
        JobTables.conditions(
                JobSamples.blank(),
                CIRCUIT,
                new TableSource("c.csv", text.getBytes(java.nio.charset.StandardCharsets.UTF_8)),
                "",
                JobSamples.NOON)
            .edit()
            .applyTo(JobSamples.blank());
    assertThat(again.conditions()).isEqualTo(job.conditions());
  }
}
