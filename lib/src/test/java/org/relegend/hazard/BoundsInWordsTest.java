package org.relegend.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;

/** What is only a bound, or not known at all, reads as such. */
class BoundsInWordsTest {
  /** 230 V rms at both ends of a bridge: 651 V is a bound, and the capacitor is made for 400 V. */
  @Test
  void boundBeyondTheRating_isCalledOneAndTheRatingGiven() {
    BoardMap map =
        SupplySketch.of(
                """
                J1 mains-terminal - L=:L N=:N
                BR1 bridge - AC1=:L AC2=:N PLUS=:P MINUS=:M
                C1 cap-pol 100u_400V +=:P -=:M
                """)
            .map();
    Hazards hazards = Hazards.of(Circuit.of(map), VoltageLimits.INSTRUMENTS);
    String amount = new DischargeText(hazards.charges().get(0), VoltageLimits.INSTRUMENTS).amount();
    assertThat(amount)
        .contains("at most")
        .contains("beyond its rating of 400 V: 8 J there") // 0.5 * 100 uF * 400 V * 400 V
        .doesNotContain(" (computed");
  }

  @Test
  void chargeBelowItsRating_saysNothingBeyond() {
    BoardMap map = SupplySketch.of("C1 cap-pol 100u_400V +=:P -=:M").map();
    Hazards hazards = Hazards.of(Circuit.of(map), VoltageLimits.INSTRUMENTS);
    String amount = new DischargeText(hazards.charges().get(0), VoltageLimits.INSTRUMENTS).amount();
    assertThat(amount).contains("400 V").doesNotContain("beyond");
  }
}
