package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.twoPin;
import static org.relegend.map.BoardMapSamples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.PartId;
import org.relegend.map.Potential;

class StoredChargeTest {
  private static List<StoredCharge> charges(BoardMap map) {
    return Hazards.of(Circuit.of(map), VoltageLimits.INSTRUMENTS).charges();
  }

  private static BoardMap declared(BoardMap map) {
    return HazardMaps.with(
        HazardMaps.with(map, "HT", Potential.Nature.DC, 300), "0V", Potential.Nature.REFERENCE, 0);
  }

  /** An unbalanced bridge, 1 2 3 4 kilohms with 5 across: 2.394 kilohms (delta to star). */
  @Test
  void bleeder_isTheWholeNetwork() {
    BoardMap map =
        with(
            BoardMapSamples.blank(),
            twoPin("C1", "cap", "47u"),
            twoPin("R1", "resistor", "1k"),
            twoPin("R2", "resistor", "2k"),
            twoPin("R3", "resistor", "3k"),
            twoPin("R4", "resistor", "4k"),
            twoPin("R5", "resistor", "5k"),
            twoPin("R6", "resistor", "9k"));
    map =
        with(
            map,
            net("HT", "C1.1", "R1.1", "R2.1"),
            net("P", "R1.2", "R3.1", "R5.1", "R6.1"),
            net("Q", "R2.2", "R4.1", "R5.2"),
            net("0V", "C1.2", "R3.2", "R4.2"),
            net("END", "R6.2"));
    StoredCharge charge = charges(declared(map)).get(0);
    double ohms = charge.bleeder().orElseThrow().ohms();
    assertThat(ohms).isCloseTo(bridge(1e3, 2e3, 3e3, 4e3, 5e3), within(1e-6));
    assertThat(charge.bleeder().orElseThrow().resistors()).doesNotContain(new PartId("R6"));
  }

  /** By delta-star of the upper triangle R1, R2, R5. */
  private static double bridge(double r1, double r2, double r3, double r4, double r5) {
    double sum = r1 + r2 + r5;
    double top = r1 * r2 / sum;
    double left = r1 * r5 / sum + r3;
    double right = r2 * r5 / sum + r4;
    return top + left * right / (left + right);
  }

  @Test
  void capacitorsSideBySide_areOneBank_andAFuseOrASwitchIsNoBleeder() {
    BoardMap map =
        with(
            BoardMapSamples.blank(),
            twoPin("C1", "cap", "47u"),
            twoPin("C2", "cap", "100n"),
            twoPin("C3", "cap", ""),
            twoPin("R1", "resistor", "100k"),
            twoPin("F1", "fuse", "1A"));
    map =
        with(
            map,
            net("HT", "C1.1", "C2.2", "C3.1", "F1.1"),
            net("HF", "F1.2", "R1.1"),
            net("0V", "C1.2", "C2.1", "C3.2", "R1.2"));
    StoredCharge charge = charges(declared(map)).get(0);
    assertThat(charge.capacitors())
        .containsExactly(new PartId("C1"), new PartId("C2"), new PartId("C3"));
    assertThat(charge.farads()).isCloseTo(47.1e-6, within(1e-12));
    assertThat(charge.unread()).containsExactly(new PartId("C3"));
    assertThat(charge.bleeder()).isEmpty();
    assertThat(charge.secondsTo(60)).isEmpty();
    assertThat(charge.isNoteworthy(VoltageLimits.INSTRUMENTS)).isTrue();
  }

  /** 100 nF at 325 V hold 32.5 uC, below the 45 uC of IEC 61010-1; what C2 adds nobody knows. */
  @Test
  void unreadCapacitorBesideASmallOne_countsAsADangerAtHighVoltage() {
    BoardMap map =
        with(BoardMapSamples.blank(), twoPin("C1", "cap", "100n"), twoPin("C2", "cap", ""));
    BoardMap both = with(map, net("HT", "C1.1", "C2.1"), net("0V", "C1.2", "C2.2"));
    BoardMap alone = with(map, net("HT", "C1.1"), net("0V", "C1.2"));
    assertThat(charges(declared(alone)).get(0).isNoteworthy(VoltageLimits.INSTRUMENTS)).isFalse();
    StoredCharge charge = charges(declared(both)).get(0);
    assertThat(charge.unread()).containsExactly(new PartId("C2"));
    assertThat(charge.isNoteworthy(VoltageLimits.INSTRUMENTS)).isTrue();
  }

  /** Two nets that a link makes one: the voltage that is told of either of them counts. */
  @Test
  void netsThatAreOneByALink_takeTheHigherVoltageOfTheTwo() {
    BoardMap map =
        with(BoardMapSamples.blank(), twoPin("C1", "cap", "1u"), twoPin("W1", "link", ""));
    map = with(map, net("A", "C1.1", "W1.1"), net("B", "W1.2"), net("0V", "C1.2"));
    map = HazardMaps.with(map, "A", Potential.Nature.DC, 12);
    map = HazardMaps.with(map, "B", Potential.Nature.DC, -250);
    map = HazardMaps.with(map, "0V", Potential.Nature.REFERENCE, 0);
    assertThat(charges(map).get(0).volts().orElseThrow()).isCloseTo(250, within(1e-9));
  }

  /** 17 V AC at either end of a winding: 2 x 24.04 V between the ends. */
  @Test
  void betweenTwoAlternatingNets_peaksMayMeet() {
    BoardMap map = with(BoardMapSamples.blank(), twoPin("C1", "cap", "10n"));
    map = with(map, net("A", "C1.1"), net("B", "C1.2"));
    map = HazardMaps.with(map, "A", Potential.Nature.AC, 17);
    map = HazardMaps.with(map, "B", Potential.Nature.AC, 17);
    assertThat(charges(map).get(0).volts().orElseThrow()).isCloseTo(48.08, within(0.01));
  }

  private static StoredCharge charge(String text, String capacitor) {
    return charges(SupplySketch.of(text).map()).stream()
        .filter(one -> one.capacitors().contains(new PartId(capacitor)))
        .findFirst()
        .orElseThrow();
  }

  /** 120 V rms: 169.7 V at the peak, 339.4 V behind, and four times the energy: 5.76 J. */
  @Test
  void halfWaveDoubler_holdsTwiceThePeak() {
    StoredCharge charge =
        charge(
            """
            C1 cap-pol 100u +=:X -=:A
            D1 diode - A=:0V K=:X
            D2 diode - A=:X K=:OUT
            C2 cap-pol 100u +=:OUT -=:0V
            net 0V reference
            net A ac 120
            """,
            "C2");
    assertThat(charge.basis()).isEqualTo(StoredCharge.Basis.COMPUTED);
    assertThat(charge.volts().orElseThrow()).isCloseTo(339.4, within(0.1));
    assertThat(charge.discharge().orElseThrow().joules()).isCloseTo(5.76, within(0.01));
  }

  /** The same from end to end of a Delon doubler, on 120 V, and on the 230 V of the mains. */
  @Test
  void delonDoubler_holdsTwiceThePeak() {
    String doubler =
        """
        %s
        D1 diode - A=:A K=:OUT
        D2 diode - A=:0V K=:A
        C1 cap-pol 100u +=:OUT -=:M
        C2 cap-pol 100u +=:M -=:0V
        C3 cap 1u 1=:OUT 2=:0V
        """;
    StoredCharge winding =
        charge(
            doubler.formatted("T1 transformer - 3=secondary:A 4=secondary:M")
                + "net 0V reference\nnet A ac 120",
            "C3");
    assertThat(winding.volts().orElseThrow()).isCloseTo(339.4, within(0.1));
    StoredCharge mains = charge(doubler.formatted("J1 mains-terminal - L=:A N=:M"), "C3");
    assertThat(mains.volts().orElseThrow()).isGreaterThan(650.4); // a bound from above
  }

  /** The larger of what was computed and what it is made for, and which that is. */
  @Test
  void rating_countsWhereItIsLarger_butNotAgainstAToldRail() {
    String supply =
        """
        D1 diode - A=:A K=:RAW
        C1 cap-pol 1000u_63V +=:RAW -=:0V
        net 0V reference
        net A ac 12
        """;
    assertThat(charge(supply, "C1").basis()).isEqualTo(StoredCharge.Basis.RATED);
    assertThat(charge(supply, "C1").volts().orElseThrow()).isEqualTo(63);
    StoredCharge result = charge(supply + "net RAW dc 15", "C1");
    assertThat(result.basis()).isEqualTo(StoredCharge.Basis.DECLARED);
    assertThat(result.volts().orElseThrow()).isEqualTo(15);
    StoredCharge more = charge(supply.replace("_63V", "_10V"), "C1");
    assertThat(more.basis()).isEqualTo(StoredCharge.Basis.COMPUTED);
    assertThat(more.volts().orElseThrow()).isCloseTo(16.97, within(0.01));
  }

  /** Between plus and minus 45 V stand 90 V: 0.405 J in 100 uF. */
  @Test
  void capacitorAcrossBothRails_holdsTheirSum() {
    StoredCharge charge = charge("C1 cap-pol 100u +=:P -=:N\nnet P dc 45\nnet N dc -45", "C1");
    assertThat(charge.discharge().orElseThrow().joules()).isCloseTo(0.405, within(1e-9));
  }

  /** Which pin is which section nobody told: each may be the largest, 40 uF at 450 V: 4.05 J. */
  @Test
  void sectionsOfACan_eachHoldTheirCharge() {
    List<StoredCharge> charges =
        charges(SupplySketch.of("C1 cap-multi 40u+40u+20u_450V 1=:B1 2=:B2 3=:B3 -=:0V").map());
    assertThat(charges)
        .hasSize(3)
        .allMatch(one -> Math.abs(one.discharge().orElseThrow().joules() - 4.05) < 1e-9);
  }

  @Test
  void canWhoseCommonNobodyNamed_keepsItsSections() {
    List<StoredCharge> charges =
        charges(SupplySketch.of("C1 cap-multi 8+8_450V 1=:B1 2=:B2 9=tag:CH").map());
    assertThat(charges).map(one -> one.ends().size()).isNotEmpty();
    assertThat(charges.stream().flatMap(one -> one.ends().stream()).distinct()).hasSize(3);
  }
}
