package org.relegend.bench.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.bench.DemoUnit;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.JobSamples;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.bench.rule.ReadingRules;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;
import org.relegend.marking.Waveform;
import org.relegend.table.TableException;
import org.relegend.table.TableSource;

class EntryTest {
  @ParameterizedTest(name = "{0} as {1}")
  @CsvSource({
    "-0.62, VOLTAGE, -0.62",
    "101m, VOLTAGE, 0.101",
    "'101 mV', VOLTAGE, 0.101",
    "4k7, RESISTANCE, 4700",
    "2M2, RESISTANCE, 2200000",
    "'\u22124,7', VOLTAGE, -4.7",
    "10u, CAPACITANCE, 0.00001"
  })
  void typed(String text, Quantity quantity, double value) {
    Amount amount = TypedReading.parse(text, quantity);
    assertThat(amount.quantity()).isEqualTo(quantity);
    assertThat(amount.value()).isCloseTo(value, within(Math.abs(value) * 1e-12));
  }

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @CsvSource({
    "voltage, 5, ohm",
    "resistance, 5, V",
    "voltage, 5, bananas",
    "voltage, five, V",
    "'', 5, ''",
    "loudness, 5, V",
    "voltage, '', V",
    "resistance, OL, ''"
  })
  void impossible_isOneClearSentence(String quantity, String value, String unit) {
    assertThatThrownBy(() -> TypedReading.parse(quantity, value, unit))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .isNotBlank()
        .doesNotContain("\n");
  }

  @Test
  void conditions_areReadAsPeopleWriteThem() {
    TypedSetup typed =
        TypedSetup.parse(
            "power on; against VN; meter 10M; warm 20 min; limit 5 mV", Instrument.UNKNOWN);
    MeasurementSetup setting = typed.setting();
    assertThat(setting.power()).isEqualTo(MeasurementSetup.Power.ON);
    assertThat(setting.against()).isEqualTo("VN");
    assertThat(setting.with().ohms()).isEqualTo(10e6);
    assertThat(setting.words()).isEqualTo("warm 20 min");
    assertThat(typed.limit().orElseThrow()).isEqualTo(new TypedSetup.Limit(0, 0.005));
  }

  @Test
  void commasDivideToo_andWhatIsNotUnderstoodIsKept() {
    MeasurementSetup setting =
        TypedSetup.parse(
                "power off, meter jack unplugged, 20k/V meter, 10 V range", Instrument.UNKNOWN)
            .setting();
    assertThat(setting.power()).isEqualTo(MeasurementSetup.Power.OFF);
    assertThat(setting.words()).isEqualTo("meter jack unplugged");
    assertThat(setting.with().ohms()).isEqualTo(200e3);
    assertThat(TypedSetup.parse("node to VN", Instrument.UNKNOWN).setting().against())
        .isEqualTo("VN");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "meter 10M, 10e6, 0",
    "10 Mohm meter, 10e6, 0",
    "x10 probe 15p, 10e6, 15e-12",
    "x1 probe, 1e6, 0",
    "20k/V meter 10 V range, 200e3, 0",
    "20 kohm/V 10 V range, 200e3, 0"
  })
  void instruments(String text, double ohms, double farads) {
    Instrument with = TypedSetup.parse(text, Instrument.UNKNOWN).setting().with();
    assertThat(with.ohms()).isEqualTo(ohms);
    assertThat(with.farads()).isCloseTo(farads, within(1e-18));
  }

  /** A small m for a large one: corrected voltages would be absurd. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"meter 10m", "10m meter", "meter 10 mohm", "meter 470"})
  void aMeterOfMilliohms_isRefused_andMIsExplained(String text) {
    assertThatThrownBy(() -> TypedSetup.parse(text, Instrument.UNKNOWN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("M stands for millions");
  }

  @Test
  void offAndLifted() {
    MeasurementSetup setting = TypedSetup.parse("power off; lifted", Instrument.UNKNOWN).setting();
    assertThat(setting.power()).isEqualTo(MeasurementSetup.Power.OFF);
    assertThat(setting.lifted()).isTrue();
    assertThatThrownBy(() -> TypedSetup.parse("meter 10 bananas", Instrument.UNKNOWN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Far above what the demo's map tells (230 V): ohms typed at a node, or a slip of the key. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({"4.7k, V", "4.7k, ''", "4k7, ''", "999999, V", "-999999, V", "3, kV"})
  void voltagesBeyondTheMap_areNoReadings(String value, String unit) {
    assertThatThrownBy(
            () -> readings(JobSamples.blank(), "A_OUT,voltage," + value + "," + unit + ","))
        .isInstanceOf(TableException.class)
        .hasMessageContaining("type ohm");
    assertThatThrownBy(() -> typed(value + unit))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("type ohm");
  }

  @Test
  void hintAtANode_isForVolts() {
    assertThatThrownBy(() -> typed("abc"))
        .hasMessageContaining("-0.62 V or 101 mV")
        .message()
        .doesNotContain("4.7k");
    assertThat(typed("4.7k ohm; lifted").amount().value()).isEqualTo(4700);
  }

  /** Without a unit it is asked for sooner than it is refused with one. */
  @Test
  void voltageFarAboveAllThatTheMapTells_wantsItsUnit() {
    VoltageBounds bounds = new VoltageBounds(150, 1000);
    Amount plate = new Amount(Quantity.VOLTAGE, 300);
    bounds.check(plate, "300 V", false);
    assertThatThrownBy(() -> bounds.check(plate, "300", true))
        .hasMessageContaining("with its unit");
    bounds.check(new Amount(Quantity.RESISTANCE, 4.7e6), "4.7M", true);
    assertThat(VoltageBounds.of(DemoUnit.circuit().map())).isEqualTo(new VoltageBounds(2300, 2300));
  }

  private static TypedLine typed(String text) {
    return TypedLine.parse(
        text,
        new TypedLine.Assumed(Quantity.VOLTAGE, Quantity.RESISTANCE),
        MeasurementSetup.with(Instrument.DIGITAL_METER),
        DemoUnit.circuit());
  }

  private static JobTables.Plan readings(Job job, String... rows) throws TableException {
    return JobTables.readings(
        job,
        DemoUnit.circuit(),
        table("at,quantity,value,unit,conditions", rows),
        "me",
        JobSamples.NOON);
  }

  private static JobTables.Plan conditions(String... rows) throws TableException {
    return JobTables.conditions(
        JobSamples.blank(),
        DemoUnit.circuit(),
        table("part,condition,date_code,note", rows),
        "me",
        JobSamples.NOON);
  }

  private static TableSource table(String head, String... rows) {
    String text = head + "\n" + String.join("\n", rows) + "\n";
    return new TableSource("r.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void readings_goToNetsPinsAndParts_andASecondTimeChangeNothing() throws Exception {
    String[] rows = {
      "A_C1,voltage,9.01,V,power on",
      "U102.7,dc voltage,13.85,V,",
      "Q101 base,,2.51,V,",
      "R118,resistance,104k,,power off",
      "A_OUT,ac voltage,1.2,V,signal in"
    };
    JobTables.Plan plan = readings(JobSamples.blank(), rows);
    Job job = plan.edit().applyTo(JobSamples.blank());
    assertThat(job.readings().stream().map(reading -> reading.at().toString()))
        .containsExactly("net:A_C1", "U102.7", "Q101.B", "R118", "net:A_OUT");
    assertThat(job.readings().at(4).amount().waveform()).isEqualTo(Waveform.AC);
    assertThat(plan.warnings()).singleElement().asString().contains("10 M\u03a9");
    JobTables.Plan again = readings(job, rows);
    assertThat(again.count()).isZero();
    assertThat(again.same()).isEqualTo(5);
    assertThat(again.edit().applyTo(job)).isEqualTo(job);
  }

  /** Kept, flagged and explained: a place that the map hasn't got. */
  @Test
  void aPlaceTheMapHasNot_isKeptAndWarnedOf() throws Exception {
    JobTables.Plan plan =
        readings(JobSamples.blank(), "R999,resistance,4k7,,", "A_XYZ,voltage,1,V,", "X1.2,,3,V,");
    Job job = plan.edit().applyTo(JobSamples.blank());
    assertThat(job.readings().stream().map(Reading::at))
        .containsExactly(
            Subject.of(new PartId("R999")), Subject.parse("net:A_XYZ"), Subject.parse("X1.2"));
    assertThat(plan.warnings()).anyMatch(w -> w.contains("line 2") && w.contains("R999"));
    assertThat(ReadingRules.inspect(DemoUnit.unit(job)))
        .filteredOn(finding -> finding.code().equals("not-in-the-map"))
        .hasSize(3);
  }

  @Test
  void aTableWithAnError_changesNothing_andTellsEachWithItsLine() {
    assertThatThrownBy(
            () ->
                readings(
                    JobSamples.blank(),
                    "A_C1,voltage,9.01,V,",
                    "A_C1,voltage,5,ohm,",
                    "A_C1,voltage,7,V,meter 10 bananas",
                    "A_C1,voltage,7,V,against NOWHERE"))
        .isInstanceOfSatisfying(
            TableException.class,
            wrong -> {
              assertThat(wrong.count()).isEqualTo(3);
              assertThat(wrong.problems().stream().map(problem -> problem.line()))
                  .isEqualTo(List.of(3, 4, 5));
            });
  }

  /** Story 7: a touchy node can't be saved without the meter's resistance. */
  @Test
  void aTouchyNode_needsItsMeter() throws Exception {
    assertThatThrownBy(() -> readings(JobSamples.blank(), "A_TIME,voltage,-12.6,V,"))
        .isInstanceOf(TableException.class)
        .hasMessageContaining("which meter")
        .hasMessageContaining("2.2 M\u03a9");
    assertThat(readings(JobSamples.blank(), "A_TIME,voltage,-12.6,V,meter 10M").count()).isOne();
  }

  /** Read against the rail that holds it, the node is as it is untouched. */
  @Test
  void againstAnotherNet_isAddedToThatOne() throws Exception {
    Job blank = JobSamples.blank();
    Job job = readings(blank, "A_TIME,voltage,0,V,against VN; meter 10M").edit().applyTo(blank);
    var unit = DemoUnit.unit(job);
    assertThat(unit.volts(unit.netsRead().get(0)).orElseThrow().value()).isEqualTo(-15.35);
    assertThat(ReadingRules.inspect(unit))
        .noneMatch(finding -> finding.code().equals("fragile-node"));
  }

  @Test
  void conditions_mayBeSeveralAtOnce() throws Exception {
    JobTables.Plan plan =
        conditions(
            "U102,replaced + socketed,9114,flux left", "U101,resoldered + damaged pad,7829,");
    Job job = plan.edit().applyTo(JobSamples.blank());
    assertThat(job.condition(new PartId("U102")).orElseThrow().states())
        .containsExactlyInAnyOrder(PartState.REPLACED, PartState.SOCKETED);
    assertThat(job.condition(new PartId("U101")).orElseThrow().text())
        .isEqualTo("re-soldered, damaged");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "U102,mended,,",
        "U102,original + replaced,,",
        "U102,original,,\nU102,replaced,,",
        ",original,,"
      })
  void badConditions_areRefused(String rows) {
    assertThatThrownBy(() -> conditions(rows))
        .isInstanceOf(TableException.class)
        .hasMessageContaining("line ");
  }
}
