package org.relegend.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;

class ChannelDeviationTest {
  private static final Subject FIRST = Subject.parse("R1");
  private static final Subject SECOND = Subject.parse("R2");

  @Test
  void itsPlaces_areFoundInEitherOrder() {
    ChannelDeviation deviation = of(List.of(SECOND, FIRST));
    assertThat(deviation.key())
        .isEqualTo(new ChannelDeviation.Key(List.of(FIRST, SECOND), ChannelDeviation.Aspect.VALUE))
        .hasToString("value of R1, R2");
  }

  @Test
  void onePlaceOrTwo_notMore() {
    assertThatThrownBy(() -> of(List.of())).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> of(List.of(FIRST, SECOND, Subject.parse("R3"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a deviation is of one place or of two, not of 3");
  }

  @Test
  void aMark_needsPartsThatAreThere_andGoesWithThem() throws EditRefusedException {
    BoardMap map =
        BoardMapSamples.blank()
            .with(
                MapTables.PARTS,
                Table.of(
                    List.of(
                        BoardMapSamples.twoPin("R1", "resistor", "1k"),
                        BoardMapSamples.twoPin("R2", "resistor", "2k"))));
    ChannelDeviation deviation = of(List.of(FIRST, SECOND));
    BoardMap marked = MapTables.DEVIATIONS.put(deviation).applyTo(map);
    assertThat(marked.deviations()).containsExactly(deviation);
    assertThat(MapTables.DEVIATIONS.put(deviation).label(map)).isEqualTo("Mark as fault: R1, R2");
    assertThat(MapTables.PARTS.remove(new PartId("R2")).applyTo(marked).deviations()).isEmpty();
    assertThat(MapTables.DEVIATIONS.remove(deviation.key()).applyTo(marked)).isEqualTo(map);
    assertThatThrownBy(
            () -> MapTables.DEVIATIONS.put(of(List.of(Subject.parse("R9")))).applyTo(map))
        .isInstanceOf(EditRefusedException.class)
        .hasMessageContaining("R9");
  }

  private static ChannelDeviation of(List<Subject> at) {
    return new ChannelDeviation(
        at,
        ChannelDeviation.Aspect.VALUE,
        ChannelDeviation.Cause.FAULT,
        List.of(says(Evidence.MEASURED)),
        "");
  }
}
