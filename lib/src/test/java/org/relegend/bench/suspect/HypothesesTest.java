package org.relegend.bench.suspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.bench.DemoUnit;

/**
 * Each fault that the demo's independent solver computed, entered as readings of eight nodes: the
 * true part must come out among the first three.
 */
class HypothesesTest {
  static Stream<String> faults() {
    return DemoUnit.hypotheses().keySet().stream().filter(name -> !name.equals("healthy"));
  }

  static List<Suspect> suspects(String fault) {
    return Suspects.of(DemoUnit.unit(DemoUnit.with(DemoUnit.hypotheses().get(fault)))).suspects();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("faults")
  void theTruePart_isAmongTheFirstThree(String fault) {
    String part = fault.split(" ")[0];
    List<Suspect> ranked = suspects(fault);
    assertThat(ranked.stream().limit(3).map(suspect -> suspect.part().text())).contains(part);
  }

  @Test
  void tableIsWhole() {
    assertThat(faults()).hasSize(9);
  }
}
