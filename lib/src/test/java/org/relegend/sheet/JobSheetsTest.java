package org.relegend.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.NOON;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.relegend.bench.CheckMark;
import org.relegend.bench.CheckStep;
import org.relegend.bench.Condition;
import org.relegend.bench.EntryId;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.Instrument;
import org.relegend.bench.IntakeRecord;
import org.relegend.bench.Job;
import org.relegend.bench.JobTable;
import org.relegend.bench.LogEntry;
import org.relegend.bench.MapLink;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/**
 * Records of a job on the demo map. Voltages are those of the demo's table of the leaking C102, as
 * an independent program solved it: channel A faulty, channel B, channel A after the repair.
 */
class JobSheetsTest {
  private static final Instant REPAIRED = NOON.plus(Duration.ofHours(3));
  private static final Map<String, double[]> VOLTS =
      new TreeMap<>(
          Map.of(
              "C1", new double[] {9.01, 9.44, 9.54},
              "ATT", new double[] {5.34, -0.0047, -0.0046},
              "VB1", new double[] {0.101, -0.0047, -0.0046},
              "DOUT", new double[] {13.85, -0.0023, 0.0013}));

  private static String customer = "";
  private static String shop = "";
  private static int pages;

  private static Job job(BoardMap map) {
    List<Reading> readings = new ArrayList<>();
    VOLTS.forEach(
        (node, volts) -> {
          add(readings, "A_" + node, volts[0], NOON);
          add(readings, "B_" + node, volts[1], NOON);
          add(readings, "A_" + node, volts[2], REPAIRED.plusSeconds(60));
          add(readings, "B_" + node, volts[1], REPAIRED.plusSeconds(60));
        });
    Job empty =
        Job.empty("job-1", new MapLink(map.id(), "0".repeat(64), map.info().title(), "../map"));
    return empty
        .withIntake(
            new IntakeRecord(
                "A is faint and badly distorted",
                "M. Tester",
                "40-0117",
                "mains lead",
                "",
                "",
                NOON))
        .with(
            JobTable.CONDITIONS,
            Table.of(
                List.of(
                    condition("C102", PartState.REPLACED, "10u 50V", ""),
                    condition("U101", PartState.RESOLDERED, "", "7829"),
                    condition("U102", PartState.REPLACED, "", "9114"))))
        .with(JobTable.READINGS, Table.of(readings))
        .with(
            JobTable.HYPOTHESES,
            Table.of(
                List.of(
                    hypothesis(1, "U102", "is broken", Hypothesis.Result.DISPROVED),
                    hypothesis(2, "C102", "leaks", Hypothesis.Result.CAUSE))))
        .with(
            JobTable.CHECKLIST,
            Table.of(List.of(new CheckMark(CheckStep.LEAKAGE, "0.1 mA", "K", REPAIRED))))
        .with(
            JobTable.LOG,
            Table.of(
                List.of(
                    entry(1, LogEntry.Kind.NOTE, "Second thoughts about the socket", NOON),
                    entry(2, LogEntry.Kind.REPAIR, "Coupling capacitor replaced", REPAIRED),
                    entry(3, LogEntry.Kind.ADJUSTMENT, "Trim set for least offset", REPAIRED),
                    entry(4, LogEntry.Kind.WATCH, "Old bead capacitors may follow", REPAIRED))));
  }

  private static void add(List<Reading> readings, String net, double volts, Instant at) {
    readings.add(
        new Reading(
            new EntryId(readings.size() + 1),
            Subject.parse("net:" + net),
            new Amount(Quantity.VOLTAGE, volts),
            MeasurementSetup.with(Instrument.DIGITAL_METER).with(MeasurementSetup.Power.ON),
            "K",
            at));
  }

  private static Condition condition(String part, PartState state, String fitted, String dateCode) {
    return new Condition(
        new PartId(part), EnumSet.of(state), fitted, dateCode, "", List.of(), "K", NOON);
  }

  private static Hypothesis hypothesis(
      int number, String part, String what, Hypothesis.Result result) {
    return new Hypothesis(
        new EntryId(number),
        List.of(new PartId(part)),
        what,
        "the output sits at the rail",
        "lift one leg",
        result,
        "told by the meter",
        "K",
        NOON);
  }

  private static LogEntry entry(int number, LogEntry.Kind kind, String text, Instant at) {
    List<Subject> about = kind == LogEntry.Kind.REPAIR ? List.of(Subject.parse("C102")) : List.of();
    return new LogEntry(new EntryId(number), kind, about, text, "K", at);
  }

  private static FinishedSheets print(JobSheets.Copy copy) throws StoreException {
    MapFolder folder = MapFolder.openReadOnly(Sheets.DEMO);
    return new JobSheets(
            job(folder.map()), Circuit.of(folder.map()), folder::fileOf, ZoneOffset.UTC)
        .print(copy, PaperSize.A4, NOON);
  }

  @BeforeAll
  static void printBoth() throws IOException, StoreException {
    try (Sheets sheets = new Sheets(print(JobSheets.Copy.CUSTOMER).pdf())) {
      customer = sheets.text();
    }
    FinishedSheets all = print(JobSheets.Copy.SHOP);
    pages = all.pages();
    try (Sheets sheets = new Sheets(all.pdf())) {
      shop = sheets.text();
      assertThat(sheets.count()).isEqualTo(pages);
    }
  }

  @Test
  void customer_readsWhatWasDoneMeasuredAndAdjusted_andWhatToWatch() {
    assertThat(customer)
        .contains("A is faint and badly distorted", "Coupling capacitor replaced")
        .contains("C102 (capacitor, 10u 25V bead) replaced 10u 50V")
        .contains("Trim set for least offset", "Old bead capacitors may follow", "0.1 mA")
        .contains("A_ATT 5.34 V -4.6 mV -4.7 mV as it should be")
        .contains("A_DOUT 13.85 V 1.3 mV -2.3 mV as it should be");
  }

  @Test
  void customer_readsWhatOthersHadDone_andNothingOfWhatWasThought() {
    assertThat(customer).contains("U102 (opamp", "U101 (");
    assertThat(customer)
        .doesNotContain("is broken", "leaks", "disproved", "Second thoughts", "uspect", "ypothes")
        .doesNotContain("the output sits at the rail", "lift one leg");
  }

  @Test
  void shop_keepsAll_alsoWhatWasDisproved() {
    assertThat(shop)
        .contains("M. Tester", "40-0117", "Second thoughts about the socket")
        .contains("is broken", "disproved", "told by the meter", "cause", "lift one leg")
        .contains("9114", "re-soldered", "Shop copy - private")
        .contains("The map was changed since the job was tied to it")
        .contains("meter 10 M", "power on");
    for (CheckStep step : CheckStep.values()) {
      assertThat(shop).contains(step.text());
    }
  }

  /** While nothing is repaired the shop reads what is suspected; the demo's fault comes first. */
  @Test
  void shop_readsTheSuspects_untilSomethingIsRepaired() throws IOException, StoreException {
    assertThat(shop).doesNotContain("Suspects, by a simple model");
    MapFolder folder = MapFolder.openReadOnly(Sheets.DEMO);
    Job job = job(folder.map());
    List<Reading> asItCame =
        job.readings().stream().filter(reading -> reading.taken().equals(NOON)).toList();
    Job open =
        job.with(JobTable.LOG, Table.empty())
            .with(JobTable.READINGS, Table.of(asItCame))
            .with(JobTable.CONDITIONS, Table.empty())
            .with(JobTable.HYPOTHESES, Table.empty());
    FinishedSheets printed =
        new JobSheets(open, Circuit.of(folder.map()), folder::fileOf, ZoneOffset.UTC)
            .print(JobSheets.Copy.SHOP, PaperSize.A4, NOON);
    try (Sheets sheets = new Sheets(printed.pdf())) {
      assertThat(sheets.text()).contains("Suspects, by a simple model Part Share Reasons C102 ");
    }
  }

  /** A reading late in the evening is of that day, whatever the day in Greenwich. */
  @Test
  void daysAndTimes_areThoseOfTheShop_andSayWhoseTheyAre() throws StoreException {
    MapFolder folder = MapFolder.openReadOnly(Sheets.DEMO);
    Circuit circuit = Circuit.of(folder.map());
    Instant late = Instant.parse("2026-03-01T02:30:00Z");
    JobFacts west = JobFacts.of(job(folder.map()), circuit, ZoneOffset.ofHours(-5));
    assertThat(west.day(late)).isEqualTo("2026-02-28");
    assertThat(west.minute(late)).isEqualTo("2026-02-28 21:30");
    assertThat(west.clock()).isEqualTo("UTC-05:00");
    assertThat(JobFacts.of(job(folder.map()), circuit, ZoneId.of("Europe/Berlin")).clock())
        .isEqualTo("Europe/Berlin");
    assertThat(shop).contains("Days and times: UTC");
    assertThat(customer).contains("Days and times: UTC");
  }

  /** No record passes over in silence that the insulation was not measured. */
  @Test
  void records_haveRoomForShopDateAndSignature_andSayThatInsulationWasNotMeasured()
      throws IOException, StoreException {
    BoardMap map = MapFolder.openReadOnly(Sheets.DEMO).map();
    Job empty = Job.empty("none", new MapLink(map.id(), "0".repeat(64), "", ""));
    for (JobSheets.Copy copy : JobSheets.Copy.values()) {
      JobSheets sheets =
          new JobSheets(
              empty,
              Circuit.of(map),
              picture -> Sheets.DEMO.resolve(picture.file()),
              ZoneOffset.UTC);
      try (Sheets read = new Sheets(sheets.print(copy, PaperSize.A4, NOON).pdf())) {
        assertThat(read.text())
            .contains("Insulation not measured", "Shop", "Date out", "Name and signature");
      }
    }
    assertThat(customer).contains("0.1 mA").doesNotContain("Insulation not measured");
  }

  @Test
  void bothCopies_carryCautions() {
    String who = org.relegend.hazard.Cautions.of("who").text();
    assertThat(customer).contains(who);
    assertThat(shop).contains(who, org.relegend.hazard.Cautions.of("discharge").text());
  }

  @Test
  void theSameCall_givesTheSameBytes() throws StoreException {
    assertThat(print(JobSheets.Copy.CUSTOMER).pdf())
        .isEqualTo(print(JobSheets.Copy.CUSTOMER).pdf());
  }

  @Test
  void anEmptyJob_isPrintedForBoth() throws IOException, StoreException {
    BoardMap map = MapFolder.openReadOnly(Sheets.DEMO).map();
    Job empty = Job.empty("none", new MapLink(map.id(), "0".repeat(64), "", ""));
    for (JobSheets.Copy copy : JobSheets.Copy.values()) {
      JobSheets sheets =
          new JobSheets(
              empty,
              Circuit.of(map),
              picture -> Sheets.DEMO.resolve(picture.file()),
              ZoneOffset.UTC);
      try (Sheets read = new Sheets(sheets.print(copy, PaperSize.LETTER, NOON).pdf())) {
        assertThat(read.text()).contains("job none");
      }
    }
  }

  @Test
  void words_forACopy_areReadOrRefusedWithTheList() {
    assertThat(JobSheets.Copy.of("Shop")).isEqualTo(JobSheets.Copy.SHOP);
    assertThatThrownBy(() -> JobSheets.Copy.of("owner"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("customer, shop");
  }

  /**
   * B_DOUT's twin is at 13.85 V as it came and off the map, so that it is compared with the map.
   */
  @Test
  void difference_namesWhatItIsFrom() throws StoreException {
    BoardMap map = MapFolder.openReadOnly(Sheets.DEMO).map();
    Circuit circuit = Circuit.of(map);
    Job found = job(map);
    List<Reading> before = found.readings().stream().filter(r -> r.taken().equals(NOON)).toList();
    JobFacts facts =
        JobFacts.of(
            found.with(JobTable.READINGS, Table.of(before)).with(JobTable.LOG, Table.empty()),
            circuit,
            ZoneOffset.UTC);
    assertThat(facts.comparedWith(new NetId("B_DOUT"))).startsWith("the map: ");
    assertThat(facts.comparedWith(new NetId("A_DOUT"))).isEqualTo("the twin");
    assertThat(shop).contains("compared with the map").contains("the twin");
  }
}
