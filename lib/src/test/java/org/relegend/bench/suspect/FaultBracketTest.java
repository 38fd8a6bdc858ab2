package org.relegend.bench.suspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.bench.Boards;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Subject;

/** Half-splitting (US Army IT0338, frame 10) on chains with one fault, and what loops do to it. */
class FaultBracketTest {
  /** A chain of n stages between an input and an output, 1 V at each node when it works. */
  private static Boards chain(int stages, String kind) {
    Boards boards =
        new Boards().parts("J1 jack input T=A_N0", "J2 jack output T=A_N%d".formatted(stages));
    for (int i = 1; i <= stages; i++) {
      boards.parts(
          kind.equals("resistor")
              ? "R%d resistor 1k 1=A_N%d 2=A_N%d".formatted(i, i - 1, i)
              : "U%d opamp TL071 3=A_N%d 2=A_N%d 6=A_N%d 7=VP 4=VN".formatted(i, i - 1, i, i));
    }
    IntStream.rangeClosed(0, stages).forEach(i -> boards.nominal("A_N" + i, 1));
    return boards.nominal("VP", 15).nominal("VN", -15);
  }

  static Stream<Arguments> chains() {
    return IntStream.of(2, 3, 4, 5, 7, 8, 9, 15, 16, 17, 32, 33)
        .boxed()
        .flatMap(n -> Stream.of(Arguments.of(n, "resistor"), Arguments.of(n, "opamp")));
  }

  @ParameterizedTest(name = "{0} stages of {1}")
  @MethodSource("chains")
  void oneFault_isFoundInTheReadingsThatHalvingNeeds(int stages, String kind) {
    int most = 0;
    for (int fault = 1; fault <= stages; fault++) {
      most = Math.max(most, readingsFor(stages, kind, fault));
    }
    int bound = 32 - Integer.numberOfLeadingZeros(stages - 1) + 1; // ceil(log2 n) + 1
    assertThat(most).isLessThanOrEqualTo(bound);
  }

  /** Reads where it is told to until one stage is left, which must be the faulty one. */
  private static int readingsFor(int stages, String kind, int fault) {
    Boards boards = chain(stages, kind);
    for (int count = 0; count <= stages; count++) {
      Suspects suspects = Suspects.of(boards.unit());
      if (suspects.bracket().passed().size() == 1) {
        String part = (kind.equals("resistor") ? "R" : "U") + fault;
        assertThat(suspects.bracket().passed()).containsExactly(new PartId(part));
        return count;
      }
      NextReading next = suspects.next().orElseThrow();
      String net = ((Subject.OfNet) next.at()).net().text();
      int at = Integer.parseInt(net.substring("A_N".length()));
      boards.read(net, at < fault ? 1 : 0.2);
    }
    throw new AssertionError("no end to it");
  }

  /** Nine points, as in the handbook's example: the first check lies at or just before the half. */
  @Test
  void firstReading_isInTheMiddle() {
    NextReading next = Suspects.of(chain(8, "resistor").unit()).next().orElseThrow();
    assertThat(next.at()).isEqualTo(Subject.of(new NetId("A_N4")));
    assertThat(next.why()).contains("50 %");
  }

  /** Pins that stand close: a slip of a millimetre has ended boards (common practice). */
  @Test
  void atClosePins_itIsSaidHowToClipOn() {
    String clip = "power off, clip on, power on";
    assertThat(Suspects.of(chain(8, "opamp").unit()).next().orElseThrow().why()).contains(clip);
    assertThat(Suspects.of(chain(8, "resistor").unit()).next().orElseThrow().why())
        .doesNotContain(clip);
  }

  /** A feedback part leads back, so that the order of the signal has an end. */
  @Test
  void aLoop_isToldFromTheWayOnward() {
    UnitReadings unit =
        new Boards()
            .parts(
                "J1 jack input T=A_IN",
                "R1 resistor 10k 1=A_IN 2=A_M",
                "R2 resistor 10k 1=A_M 2=A_OUT",
                "U1 opamp TL071 2=A_M 3=0V 6=A_OUT 7=VP 4=VN",
                "J2 jack output T=A_OUT")
            .nominal("VP", 15)
            .nominal("VN", -15)
            .unit();
    SignalPath path = SignalPath.of(unit);
    assertThat(path.nets()).extracting(NetId::text).containsExactly("A_IN", "A_M", "A_OUT");
    assertThat(path.feedback())
        .containsExactly(
            new SignalPath.Edge(new NetId("A_OUT"), new NetId("A_M"), new PartId("R2")));
    assertThat(path.sinks()).containsExactly(new NetId("A_OUT"));
    assertThat(path.between(new NetId("A_IN"), new NetId("A_OUT")))
        .containsExactlyInAnyOrder(new PartId("R1"), new PartId("U1"));
  }

  @ParameterizedTest(name = "{0} stages joined into a ring")
  @ValueSource(ints = {1, 2, 5})
  void aRing_endsToo(int stages) {
    List<String> lines = new ArrayList<>(List.of("J1 jack input T=A_N0"));
    for (int i = 0; i <= stages; i++) {
      lines.add("U%d opamp TL071 3=A_N%d 6=A_N%d 7=VP".formatted(i, i, (i + 1) % (stages + 1)));
    }
    UnitReadings unit = new Boards().parts(lines.toArray(String[]::new)).nominal("VP", 15).unit();
    assertThat(SignalPath.of(unit).nets()).hasSize(stages + 1);
    assertThat(Suspects.of(unit).suspects()).hasSize(stages + 2);
  }
}
