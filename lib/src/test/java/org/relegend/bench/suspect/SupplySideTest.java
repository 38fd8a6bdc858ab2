package org.relegend.bench.suspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.part;
import static org.relegend.map.BoardMapSamples.twoPin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.bench.Condition;
import org.relegend.bench.EntryId;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.JobSamples;
import org.relegend.bench.JobTable;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.bench.rule.RuleFinding;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.Potential;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;
import org.relegend.marking.Waveform;

/**
 * No reading is proposed where a supply can hurt. Each circuit tells by hand what is dangerous in
 * it; nobody told those voltages to the map.
 */
class SupplySideTest {
  /** A supply, with the nets of it that can hurt. */
  private record Supply(String name, BoardMap map, List<String> dangerous) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static BoardMap map(List<Part> parts, Net... nets) {
    BoardMap map = BoardMapSamples.with(BoardMapSamples.blank(), parts.toArray(new Part[0]));
    return BoardMapSamples.with(map, nets);
  }

  private static Net declared(Net net, Potential.Nature nature, double volts) {
    return net.withPotential(new Potential(nature, volts));
  }

  private static Net ground(String... pins) {
    return declared(net("GND", pins), Potential.Nature.REFERENCE, 0);
  }

  /** L and N of 230 V pass the filter: LL and NN are live, and so is what hangs on them. */
  private static Supply filter() {
    return new Supply(
        "mains behind a line filter",
        map(
            List.of(
                part("J1", "connector", "inlet", "L", "N"),
                part("FL1", "filter", "", "L", "N", "E", "LL", "NN"),
                twoPin("R1", "resistor", "1M"),
                twoPin("R2", "resistor", "1M")),
            declared(net("MAINS_L", "J1.L", "FL1.L"), Potential.Nature.MAINS, 230),
            net("MAINS_N", "J1.N", "FL1.N"),
            net("A", "FL1.LL", "R1.1"),
            net("B", "FL1.NN", "R2.1"),
            net("MID", "R1.2", "R2.2")),
        List.of("A", "B", "MID"));
  }

  /** A line output transformer on 130 V makes kilovolts; its windings aren't told. */
  private static Supply kilovolts() {
    return new Supply(
        "kilovolts of a picture tube",
        map(
            List.of(
                part("T2", "transformer", "", "1", "2", "3", "4"),
                part("D1", "diode", "", "A", "K"),
                twoPin("C1", "capacitor", "1n 20kV"),
                twoPin("R1", "resistor", "100M")),
            declared(net("B130", "T2.1"), Potential.Nature.DC, 130),
            net("DRIVE", "T2.2"),
            net("HOT_END", "T2.3", "D1.A"),
            net("EHT", "D1.K", "C1.1", "R1.1"),
            net("FOCUS", "R1.2"),
            ground("T2.4", "C1.2")),
        List.of("DRIVE", "HOT_END", "EHT", "FOCUS"));
  }

  /** A converter on a battery of 6 V charges 330 u to some 330 V: 18 J. */
  private static Supply flash() {
    return new Supply(
        "flash capacitor",
        map(
            List.of(
                part("D1", "diode", "", "A", "K"),
                part("C1", "cap-pol", "330u 350V", "+", "-"),
                twoPin("R1", "resistor", "1M")),
            net("CONV", "D1.A"),
            net("STORE", "D1.K", "C1.+", "R1.1"),
            net("TRIGGER", "R1.2"),
            ground("C1.-")),
        List.of("STORE", "TRIGGER"));
  }

  /** A mains transformer without told windings, a bridge, a reservoir of 450 V, an anode load. */
  private static Supply valve() {
    return new Supply(
        "anode supply of a valve",
        map(
            List.of(
                part("T1", "transformer", "", "1", "2", "3", "4"),
                part("D1", "diode", "", "A", "K"),
                part("C1", "cap-pol", "47u 450V", "+", "-"),
                twoPin("R1", "resistor", "100k"),
                twoPin("R2", "resistor", "1M")),
            declared(net("MAINS_L", "T1.1"), Potential.Nature.MAINS, 230),
            declared(net("MAINS_N", "T1.2"), Potential.Nature.MAINS, 0),
            net("SEC", "T1.3", "D1.A"),
            net("HT", "D1.K", "C1.+", "R1.1"),
            net("ANODE", "R1.2", "R2.1"),
            net("TAP", "R2.2"),
            ground("T1.4", "C1.-")),
        List.of("SEC", "HT", "ANODE", "TAP"));
  }

  /** A mains winding of which nobody knows the voltage feeds a resistor. */
  private static Supply winding() {
    return new Supply(
        "winding of unknown voltage",
        map(
            List.of(
                part("T1", "transformer", "", "1", "2", "5", "6"),
                twoPin("R1", "resistor", "10k"),
                twoPin("R2", "resistor", "10k")),
            declared(net("MAINS_L", "T1.1"), Potential.Nature.MAINS, 230),
            net("MAINS_N", "T1.2"),
            net("W", "T1.5", "R1.1"),
            net("MID", "R1.2", "R2.1"),
            ground("T1.6", "R2.2")),
        List.of("W", "MID"));
  }

  /** An anode battery of 90 V. */
  private static Supply battery() {
    return new Supply(
        "anode battery",
        map(
            List.of(
                part("BT1", "battery", "90V", "+", "-"),
                twoPin("R1", "resistor", "47k"),
                twoPin("R2", "resistor", "1M")),
            net("BPLUS", "BT1.+", "R1.1"),
            net("ANODE", "R1.2", "R2.1"),
            ground("BT1.-", "R2.2")),
        List.of("BPLUS", "ANODE"));
  }

  static Stream<Supply> supplies() {
    return Stream.of(filter(), kilovolts(), flash(), valve(), winding(), battery());
  }

  private static UnitReadings unit(BoardMap map) {
    return UnitReadings.of(JobSamples.blank(), Circuit.of(map));
  }

  @ParameterizedTest
  @MethodSource("supplies")
  void noReadingIsProposedThere_norAPartToTouch(Supply supply) {
    UnitReadings unit = unit(supply.map());
    ProbePoints places = new ProbePoints(unit);
    for (String name : supply.dangerous()) {
      assertThat(places.pin(new NetId(name))).as(name).isEmpty();
    }
    assertThat(places.mayTouch(unit.map().part(new PartId("R1")).orElseThrow())).isFalse();
  }

  /** A stage of 15 V of its own beside the supply, of which one node reads wrong. */
  private static BoardMap withStage(BoardMap map) {
    BoardMap more =
        BoardMapSamples.with(
            map,
            twoPin("R91", "resistor", "10k"),
            twoPin("R92", "resistor", "10k"),
            twoPin("R93", "resistor", "10k"),
            twoPin("R94", "resistor", "10k"));
    return BoardMapSamples.with(
        more,
        declared(net("VP", "R91.1"), Potential.Nature.DC, 15),
        net("LOW1", "R91.2", "R92.1", "R93.1"),
        net("LOW2", "R93.2", "R94.1"),
        declared(net("SGND", "R92.2", "R94.2"), Potential.Nature.REFERENCE, 0));
  }

  /** There is something to read, so a reading is proposed; and it is none that can hurt. */
  @ParameterizedTest
  @MethodSource("supplies")
  void theNextReading_isOfTheStage_notOfTheSupply(Supply supply) {
    Circuit circuit = Circuit.of(withStage(supply.map()));
    UnitReadings unit = UnitReadings.of(read(reading("LOW1", 0.1, Waveform.DC)), circuit);
    Optional<NextReading> next = Suspects.of(unit).next();
    assertThat(next).as("a proposal to be judged").isPresent();
    assertThat(next.orElseThrow().at().toString())
        .as("proposed beside " + supply)
        .isIn("net:LOW1", "net:LOW2", "net:VP", "net:SGND", "R91", "R92", "R93", "R94");
  }

  /** A winding that is told with its side and its volts is read as any other. */
  @Test
  void tellingAWindingsVoltsAndSides_opensTheWay_tellingOneOfThemDoesNot() {
    assertThat(new ProbePoints(unit(wound(true, true))).pin(new NetId("MID"))).isPresent();
    assertThat(new ProbePoints(unit(wound(true, true))).pin(new NetId("W"))).isPresent();
    assertThat(new ProbePoints(unit(wound(true, false))).pin(new NetId("MID"))).isEmpty();
    assertThat(new ProbePoints(unit(wound(false, true))).pin(new NetId("W"))).isEmpty();
  }

  private static BoardMap wound(boolean sides, boolean volts) {
    BoardMap map = winding().map();
    Part told =
        map.part(new PartId("T1"))
            .orElseThrow()
            .withPins(
                List.of(
                    new Pin("1", sides ? "primary" : ""),
                    new Pin("2", sides ? "primary" : ""),
                    new Pin("5", sides ? "secondary" : ""),
                    new Pin("6", sides ? "secondary" : "")),
                List.of());
    Net fed = map.net(new NetId("W")).orElseThrow();
    return BoardMapSamples.with(
        BoardMapSamples.with(map, told), volts ? declared(fed, Potential.Nature.AC, 9) : fed);
  }

  @ParameterizedTest
  @MethodSource("supplies")
  void whatIsUnknown_isAskedFor(Supply supply) {
    UnitReadings unit = unit(supply.map());
    List<String> known =
        supply.dangerous().stream()
            .filter(name -> unit.hazards().isReached(Node.of(new NetId(name))))
            .toList();
    List<RuleFinding> asked =
        Suspects.of(unit).findings().stream()
            .filter(finding -> finding.code().equals("supply-voltage-unknown"))
            .toList();
    if (known.size() < supply.dangerous().size()) {
      assertThat(asked).singleElement().extracting(RuleFinding::remedy).asString().contains("?");
    }
  }

  /** Low-voltage stages on told rails are read as before. */
  @Test
  void stagesOnToldRails_areProposed() {
    BoardMap map =
        map(
            List.of(
                twoPin("R1", "resistor", "10k"),
                twoPin("R2", "resistor", "10k"),
                part("C1", "cap-pol", "10u 25V", "+", "-")),
            declared(net("VP", "R1.1"), Potential.Nature.DC, 15),
            net("MID", "R1.2", "R2.1", "C1.+"),
            ground("R2.2", "C1.-"));
    assertThat(new ProbePoints(unit(map)).pin(new NetId("MID"))).isPresent();
  }

  private static Reading reading(String net, double volts, Waveform waveform) {
    return new Reading(
        new EntryId(1),
        Subject.parse("net:" + net),
        new Amount(Quantity.VOLTAGE, volts, waveform),
        MeasurementSetup.with(Instrument.DIGITAL_METER).with(MeasurementSetup.Power.ON),
        "",
        JobSamples.NOON);
  }

  private static Job read(Reading reading) {
    Job job = JobSamples.blank();
    return job.with(JobTable.READINGS, job.readings().with(reading));
  }

  /** 47 u with 430 V across it: 4.3 J. The map knew of nothing. */
  private static BoardMap untold() {
    return map(
        List.of(
            part("C1", "cap-pol", "47u", "+", "-"),
            twoPin("R1", "resistor", "220k"),
            twoPin("R2", "resistor", "1M")),
        net("X", "C1.+", "R1.1", "R2.1"),
        net("Y", "R1.2"),
        ground("C1.-", "R2.2"));
  }

  @Test
  void readAboveTheLimits_theNodeIsHigh_andNothingThereIsProposed() {
    UnitReadings before = unit(untold());
    assertThat(new ProbePoints(before).pin(new NetId("X"))).isPresent();
    UnitReadings after =
        UnitReadings.of(read(reading("X", 430, Waveform.DC)), Circuit.of(untold()));
    assertThat(after.hazards().isReached(Node.of(new NetId("X")))).isTrue();
    assertThat(after.hazards().isReached(Node.of(new NetId("Y")))).isTrue();
    assertThat(new ProbePoints(after).pin(new NetId("X"))).isEmpty();
    assertThat(new ProbePoints(after).mayTouch(after.map().part(new PartId("C1")).orElseThrow()))
        .isFalse();
    assertThat(after.hazards().hazards().callForCautions()).isTrue();
    assertThat(after.hazards().dischargeFirst(new PartId("C1")).orElseThrow())
        .contains(
            "4.35 J", "430 V", "discharge it and measure", "resistor of 15 k", "into 2 or more");
    Suspects suspects = Suspects.of(after);
    assertThat(suspects.findings())
        .anyMatch(f -> f.code().equals("high-voltage-read") && f.remedy().contains("zone"));
    assertThat(suspects.next().map(NextReading::why).orElse("")).doesNotContain("lift one leg");
  }

  /** 48 V of alternating voltage is above 30 V; 48 V direct is not above 60 V. */
  @Test
  void theWaveform_decidesWhichLimitHolds() {
    BoardMap map = untold();
    assertThat(
            UnitReadings.of(read(reading("Y", 48, Waveform.AC)), Circuit.of(map))
                .hazards()
                .readHigh())
        .hasSize(1);
    assertThat(
            UnitReadings.of(read(reading("Y", 48, Waveform.DC)), Circuit.of(map))
                .hazards()
                .readHigh())
        .isEmpty();
  }

  /** The bleeder of 1 M that was found missing is none. */
  @Test
  void missingBleeder_isNotCountedOn() {
    Job job = read(reading("X", 430, Waveform.DC));
    UnitReadings whole = UnitReadings.of(job, Circuit.of(untold()));
    assertThat(whole.hazards().hazards().charges().get(0).bleeder()).isPresent();
    Condition missing =
        new Condition(
            new PartId("R2"),
            Set.of(PartState.MISSING),
            "",
            "",
            "",
            List.of(),
            "",
            JobSamples.NOON);
    UnitReadings bare =
        UnitReadings.of(
            job.with(JobTable.CONDITIONS, job.conditions().with(missing)), Circuit.of(untold()));
    assertThat(bare.hazards().hazards().charges().get(0).bleeder()).isEmpty();
  }

  /** No step that touches a part says no more than "with the power off". */
  @Test
  void stepsThatTouchParts_askForMoreThanThePowerOff() {
    List<String> texts = new ArrayList<>();
    for (Supply supply : supplies().toList()) {
      Suspects suspects = Suspects.of(unit(supply.map()));
      suspects.findings().forEach(finding -> texts.add(finding.remedy()));
      suspects.next().ifPresent(next -> texts.add(next.why()));
    }
    assertThat(texts)
        .allMatch(text -> !text.matches("(?is).*with the power off,? (lift|test|measure|beep).*"));
  }
}
