package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.relegend.map.HazardZone;

class CautionsTest {
  /** What the trade tells everyone (common practice). */
  @Test
  void all_tellTheUsualCautions() {
    String text =
        Cautions.all().stream()
            .map(caution -> caution.title() + " " + caution.text())
            .collect(Collectors.joining(" "))
            .toLowerCase(Locale.ROOT);
    assertThat(text)
        .contains(
            "pull the plug",
            "then measure",
            "one hand",
            "isolation transformer",
            "in series",
            "rings",
            "never alone",
            "licensed",
            "rules of your country");
  }

  /** Where sources conflict, both views stand there. */
  @Test
  void conflictingPractice_isToldFromBothSides() {
    assertThat(Cautions.of("discharge").text())
        .contains("Practice disagrees", "through a resistor", "shorting probe");
    assertThat(Cautions.of("isolation").text())
        .contains("live chassis", "earthed clip", "residual-current");
  }

  @ParameterizedTest
  @EnumSource(HazardZone.Kind.class)
  void everyKindOfZone_hasItsCaution(HazardZone.Kind kind) {
    assertThat(Cautions.of(kind).title()).isNotBlank();
    assertThat(Cautions.of(kind).text()).isNotBlank();
    assertThat(Cautions.all()).doesNotContain(Cautions.of(kind));
  }

  @Test
  void unknownKey_isRefused() {
    assertThatThrownBy(() -> Cautions.of("nosuch")).isInstanceOf(IllegalArgumentException.class);
  }
}
