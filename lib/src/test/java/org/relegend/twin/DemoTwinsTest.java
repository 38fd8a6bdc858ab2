package org.relegend.twin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.DemoMap;
import org.relegend.map.BoardMap;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.MapTables;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;

/** The demo instrument's two channels, against the twins its own table names. */
class DemoTwinsTest {
  private static final Map<String, String> TRUTH = truth();
  private static final BoardMap BARE = DemoMap.map().with(MapTables.TWINS, Table.empty());
  private static final TwinSearch SEARCH = TwinSearch.of(Circuit.of(BARE));

  private static Map<String, String> truth() {
    Map<String, String> truth = new TreeMap<>();
    for (TwinPair pair : DemoMap.map().twins()) {
      truth.put(pair.a().toString(), pair.b().toString());
    }
    return truth;
  }

  static TwinSeed seed(String a, String b) {
    return new TwinSeed(Subject.parse(a), Subject.parse(b));
  }

  private static Map<String, String> parts(TwinResult twins) {
    return twins.pairs().stream()
        .filter(pair -> pair.a() instanceof Subject.OfPart)
        .collect(Collectors.toMap(p -> p.a().toString(), p -> p.b().toString()));
  }

  private static Map<String, String> nets(TwinResult twins) {
    return twins.pairs().stream()
        .filter(pair -> pair.a() instanceof Subject.OfNet)
        .collect(Collectors.toMap(p -> p.a().toString(), p -> p.b().toString()));
  }

  @Test
  void onePair_givesAllOfTheChannel_andItsOneDifference() {
    TwinResult twins = SEARCH.from(List.of(seed("R101", "R201")));
    assertThat(parts(twins)).isEqualTo(TRUTH);
    assertThat(nets(twins)).hasSize(25);
    nets(twins).forEach((a, b) -> assertThat(b).isEqualTo(a.replace("net:A_", "net:B_")));
    assertThat(twins.pairs())
        .filteredOn(pair -> pair.a() instanceof Subject.OfSection)
        .hasSize(7)
        .allMatch(pair -> pair.b().toString().equals(pair.a().toString().replace("U1", "U2")));
    assertThat(twins.contradictions()).isEmpty();
    assertThat(twins.differences())
        .singleElement()
        .satisfies(
            difference -> {
              assertThat(difference.aspect()).isEqualTo(ChannelDeviation.Aspect.MISSING);
              assertThat(difference.a()).isEmpty();
              assertThat(difference.b())
                  .containsExactly(Subject.parse("R225"), Subject.parse("J203"));
              assertThat(difference.text())
                  .isEqualTo("R225, J203 on B_E3 have no counterpart on A_E3");
            });
    assertThat(twins.common())
        .extracting(Subject::toString)
        .containsExactly("net:0V", "net:THR", "net:VN", "net:VP");
    assertThat(twins.pairs()).allMatch(pair -> pair.trust() >= ProposedTwin.LOW);
  }

  @Test
  void pins_goWithTheirNets() {
    TwinResult twins = SEARCH.from(List.of(seed("R101", "R201")));
    assertThat(twins.pins()).hasSizeGreaterThan(90);
    assertThat(twins.pins())
        .allMatch(
            pin -> {
              String b = pin.a().toString().replaceFirst("1", "2");
              return pin.b().toString().equals(b);
            });
    assertThat(twins.of(Subject.parse("U102.7"))).map(ProposedTwin::b).contains(parse("U202.7"));
    assertThat(twins.of(Subject.parse("U102.4"))).as("a supply pin").isEmpty();
  }

  private static Subject parse(String text) {
    return Subject.parse(text);
  }

  static List<String> firsts() {
    return List.copyOf(TRUTH.keySet());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("firsts")
  void everyRightSeed_givesNothingWrong(String part) {
    TwinResult twins = SEARCH.from(List.of(seed(part, TRUTH.get(part))));
    assertThat(twins.contradictions()).isEmpty();
    assertThat(parts(twins)).allSatisfy((a, b) -> assertThat(b).isEqualTo(TRUTH.get(a)));
    // nothing can be told from a capacitor between the supplies
    assertThat(parts(twins)).hasSize(part.equals("C106") ? 1 : TRUTH.size());
    if (part.equals("C106")) {
      assertThat(twins.pairs()).allMatch(pair -> pair.trust() < ProposedTwin.LOW);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("firsts")
  void noWrongSeed_isSilent(String part) {
    Random random = new Random(part.hashCode());
    for (int i = 0; i < 8; i++) {
      String wrong = wrong(part, i < 6, random);
      TwinResult twins = SEARCH.from(List.of(seed(part, wrong)));
      if (twins.contradictions().isEmpty()) {
        assertThat(twins.pairs())
            .as("%s = %s", part, wrong)
            .filteredOn(pair -> !right(pair))
            .allMatch(pair -> pair.trust() < ProposedTwin.LOW);
      } else {
        assertThat(twins.contradictions().get(0).pairs()).containsExactly(seed(part, wrong));
      }
    }
  }

  private static boolean right(ProposedTwin pair) {
    return pair.b().toString().equals(pair.a().toString().replaceFirst("1", "2"))
        || pair.b().toString().equals(pair.a().toString().replace("net:A_", "net:B_"));
  }

  /** A part of the other channel that isn't the twin, of the same kind if there is one. */
  private static String wrong(String part, boolean sameKind, Random random) {
    List<String> wrong = new ArrayList<>();
    String kind = kind(part);
    for (Part other : BARE.parts()) {
      String name = other.id().text();
      if (other.channel().equals("B") && !name.equals(TRUTH.get(part))) {
        if (!sameKind || other.kind().equals(kind)) {
          wrong.add(name);
        }
      }
    }
    return wrong.isEmpty() ? wrong(part, false, random) : wrong.get(random.nextInt(wrong.size()));
  }

  private static String kind(String part) {
    return BARE.part(new PartId(part)).orElseThrow().kind();
  }

  @Test
  void seeds_mayBeSectionsPinsAndNets_andStandEitherWayRound() {
    for (TwinSeed seed :
        List.of(
            seed("U101/Ta", "U201/Ta"),
            seed("U101", "U201"),
            seed("U102", "U202"),
            seed("R106.1", "R206.1"),
            seed("net:A_VC1", "net:B_VC1"))) {
      TwinResult twins = SEARCH.from(List.of(seed));
      assertThat(twins.contradictions()).as("%s", seed).isEmpty();
      assertThat(parts(twins)).as("%s", seed).isEqualTo(TRUTH);
    }
    TwinResult twins = SEARCH.from(List.of(seed("R101", "R201"), seed("R220", "R120")));
    assertThat(parts(twins)).isEqualTo(TRUTH);
  }

  @Test
  void seedsThatContradictEachOther_areTold_withTheSmallestSet() {
    TwinResult twins =
        SEARCH.from(List.of(seed("R101", "R201"), seed("R106", "R206"), seed("R115", "R217")));
    assertThat(twins.contradictions()).hasSize(1);
    assertThat(twins.contradictions().get(0).pairs()).containsExactly(seed("R115", "R217"));
    assertThat(twins.pairs()).allMatch(pair -> pair.trust() < ProposedTwin.LOW);
  }

  @Test
  void twinsHeldAlready_areSeeds_whereTheyHaveAPlaceInTheCircuit() {
    TwinSearch search = TwinSearch.of(Circuit.of(DemoMap.map()));
    assertThat(search.known()).hasSize(TRUTH.size());
    TwinResult twins = search.from(List.of(), search.known());
    assertThat(parts(twins)).isEqualTo(TRUTH);
    assertThat(twins.contradictions()).isEmpty();
  }

  @Test
  void aSeedWithoutAPlaceInTheCircuit_isRefused() {
    BoardMap map =
        BARE.with(
            MapTables.PARTS,
            BARE.parts()
                .with(
                    Part.named(
                        new PartId("R300"),
                        new org.relegend.map.Designator("R300"),
                        BARE.parts().at(0).board())));
    TwinSearch search = TwinSearch.of(Circuit.of(map));
    assertThatThrownBy(() -> search.from(List.of(seed("R101", "R300"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("R300 has no pins on any net yet");
    assertThatThrownBy(() -> seed("R101", "net:VP"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("a part has a part");
    assertThatThrownBy(() -> seed("R101", "R101")).isInstanceOf(IllegalArgumentException.class);
    assertThat(search.from(List.of())).isEqualTo(TwinResult.NONE);
  }
}
