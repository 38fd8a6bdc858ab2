package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
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

  /** A live heatsink kills a hand that tests its heat: the meter comes first. */
  @Test
  void hot_asksForTheMeterBeforeAnyHand() {
    String text = Cautions.of(HazardZone.Kind.HOT).text();
    assertThat(text).doesNotContain("finger").contains("measure", "not with a hand");
    assertThat(text.indexOf("measure")).isLessThan(text.indexOf("heat with"));
  }

  /** What else harms at a bench (common practice), each with its word. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "implode",
        "X-rays",
        "Beryllium oxide",
        "Selenium",
        "biphenyls",
        "Asbestos",
        "Mercury",
        "luminous paint",
        "lithium",
        "Lead-acid",
        "Solder fumes",
        "vent or burst",
        "spark you do not",
        "first aid",
        "emergency number",
        "Not for switch-mode supplies",
        "high-voltage probe"
      })
  void whatElseHarms_hasItsCaution(String word) {
    assertThat(Cautions.all()).anyMatch(caution -> caution.text().contains(word));
  }

  /** Each can be read in one breath or two. */
  @Test
  void eachCaution_isShort() {
    assertThat(Cautions.all()).allMatch(caution -> caution.text().length() < 650);
    assertThat(Cautions.all()).extracting(Caution::title).doesNotHaveDuplicates();
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
