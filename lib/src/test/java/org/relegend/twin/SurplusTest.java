package org.relegend.twin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Deck;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.Subject;

/** Parts side by side in both channels, but not as many or not of the same values. */
class SurplusTest {
  /** R1 to Rn of a channel from its input over its middle to ground, then those of the other. */
  private static TwinResult twins(String first, String second) {
    Deck deck =
        new Deck(
            "TWO CHANNELS\n.SUBCKT A 1\n%s.ENDS A\n.SUBCKT B 1\n%s.ENDS B\nX1 5 A\nX2 6 B\n"
                .formatted(first, second));
    return TwinSearch.of(Circuit.of(deck.map()))
        .from(
            List.of(new TwinSeed(Subject.of(deck.part("X1.R1")), Subject.of(deck.part("X2.R1")))));
  }

  private static String pairs(TwinResult twins) {
    Stream<ProposedTwin> parts =
        twins.pairs().stream().filter(pair -> pair.a() instanceof Subject.OfPart);
    return parts.map(pair -> pair.a() + "=" + pair.b() + " " + pair.basis().word()).toList() + "";
  }

  @Test
  void moreOnOneSide_areAGroup_andNonePaired() {
    TwinResult twins =
        twins(
            "R1 1 2 10K\nC2 2 0 1U\nC3 2 0 1U\nC4 2 0 1U\nR5 2 3 5K\n",
            "R1 1 2 10K\nC2 2 0 1U\nC3 2 0 1U\nR5 2 3 5K\n");
    assertThat(pairs(twins)).isEqualTo("[R1=R3 declared, R2=R4 value]");
    assertThat(twins.groups())
        .containsExactly(new TwinGroup(subjects("C1", "C2", "C3"), subjects("C4", "C5")));
    assertThat(twins.differences())
        .singleElement()
        .satisfies(
            difference -> {
              assertThat(difference.aspect()).isEqualTo(ChannelDeviation.Aspect.MISSING);
              assertThat(difference.text())
                  .isEqualTo("1 of C1, C2, C3 has no counterpart; which can't be told");
            });
  }

  @Test
  void anotherValueOnOneSide_leavesOpenWhoseTwinItIs() {
    TwinResult twins =
        twins(
            "R1 1 2 10K\nC2 2 0 1U\nC3 2 0 1U\nC4 2 0 4.7U\n",
            "R1 1 2 10K\nC2 2 0 1U\nC3 2 0 2.2U\nC4 2 0 4.7U\n");
    assertThat(pairs(twins))
        .isEqualTo("[C1=C4 one of several, C2=C5 one of several, C3=C6 value, R1=R2 declared]");
    assertThat(twins.groups())
        .containsExactly(new TwinGroup(subjects("C1", "C2"), subjects("C4", "C5")));
    assertThat(twins.pairs())
        .filteredOn(pair -> pair.basis() == TwinBasis.ONE_OF_SEVERAL)
        .hasSize(2)
        .allMatch(pair -> pair.trust() < ProposedTwin.LOW);
  }

  @Test
  void endsThatHangOnANet_areAGroup_andPaired() {
    String channel = "R1 1 2 10K\nC2 2 3 1U\nC3 2 4 1U\nR4 2 5 5K\nR5 5 6 7K\n";
    TwinResult twins = twins(channel, channel);
    assertThat(pairs(twins))
        .isEqualTo(
            "[C1=C3 one of several, C2=C4 one of several, R1=R4 declared, R2=R5 value,"
                + " R3=R6 value]");
    assertThat(twins.groups())
        .containsExactly(new TwinGroup(subjects("C1", "C2"), subjects("C3", "C4")));
    assertThat(twins.differences()).isEmpty();
  }

  private static List<Subject> subjects(String... names) {
    return Stream.of(names).map(Subject::parse).toList();
  }
}
