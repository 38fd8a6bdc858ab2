package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.circuit.Circuit;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;

/** Supply circuits with their truth, each worked out by hand and told in words beside it. */
class SupplyTruthsTest {
  /** What may stand for a truth: never less. */
  private static final Map<String, Set<NodeHazard.Grade>> GRADES =
      Map.of(
          "live", Set.of(NodeHazard.Grade.CARRIES),
          "high", Set.of(NodeHazard.Grade.CARRIES),
          "untold", Set.of(NodeHazard.Grade.UNKNOWN),
          "fault", Set.of(NodeHazard.Grade.FAULT),
          "quiet", Set.of(NodeHazard.Grade.NOT_KNOWN));

  /** One circuit of supplies.txt. */
  record Case(String name, String words, List<String> lines, Map<String, List<String>> truths) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> cases() throws IOException {
    try (InputStream in = SupplyTruthsTest.class.getResourceAsStream("supplies.txt")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return Stream.of(text.strip().split("\\R\\s*\\R")).map(SupplyTruthsTest::read);
    }
  }

  /** "# name", "> truth in words", lines of the sketch, "= grade nets" in the end. */
  private static Case read(String block) {
    List<String> lines = new ArrayList<>();
    Map<String, List<String>> truths = new LinkedHashMap<>();
    String name = "";
    StringBuilder words = new StringBuilder();
    for (String line : block.strip().split("\\R")) {
      String rest = line.substring(1).strip();
      switch (line.charAt(0)) {
        case '#' -> name = rest;
        case '>' -> words.append(rest).append(' ');
        case '=' -> {
          List<String> all = List.of(rest.split("\\s+"));
          truths.put(all.get(0), all.subList(1, all.size()));
        }
        default -> lines.add(line);
      }
    }
    return new Case(name, words.toString(), lines, truths);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void truth_isWhatIsTold(Case one) {
    Circuit circuit = Circuit.of(SupplySketch.of(String.join("\n", one.lines())).map());
    Hazards hazards = Hazards.of(circuit, VoltageLimits.INSTRUMENTS);
    one.truths()
        .forEach(
            (truth, nets) ->
                nets.forEach(
                    net -> {
                      String text = one + ": " + one.words() + "- " + net;
                      NodeHazard hazard = hazard(circuit, hazards, net);
                      assertThat(GRADES.get(truth))
                          .as(text + " " + hazard)
                          .contains(hazard.grade());
                      assertThat(hazards.mains().has(hazard.node()))
                          .as(text + " live")
                          .isEqualTo(truth.equals("live"));
                    }));
  }

  private static NodeHazard hazard(Circuit circuit, Hazards hazards, String name) {
    return circuit.map().nets().has(new NetId(name))
        ? hazards.at(new NetId(name))
        : hazards.at(circuit, PinRef.parse(name));
  }

  /** Nothing that is live stands among what a barrier is said to keep it from. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void liveNets_areKeptFromNothing(Case one) {
    Circuit circuit = Circuit.of(SupplySketch.of(String.join("\n", one.lines())).map());
    Hazards hazards = Hazards.of(circuit, VoltageLimits.INSTRUMENTS);
    List<String> live = one.truths().getOrDefault("live", List.of());
    hazards.mains().barriers().stream()
        .flatMap(barrier -> barrier.far().stream())
        .flatMap(pin -> circuit.nodesOf(pin).stream())
        .map(node -> node.subject().toString().replace("net:", ""))
        .forEach(net -> assertThat(live).as(one.name()).doesNotContain(net));
  }

  @Test
  void circuits_areManyAndOfManyKinds() throws IOException {
    assertThat(cases()).hasSizeGreaterThanOrEqualTo(40);
    assertThat(cases().map(Case::words)).allMatch(words -> words.length() > 30);
    assertThat(cases().flatMap(c -> c.truths().keySet().stream()).distinct())
        .containsExactlyInAnyOrderElementsOf(GRADES.keySet());
  }
}
