package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every mark, on parts of every class: pieces of real marks thrown together. */
class MarkLawsTest {
  private static final String[] PIECES = {
    "1", "2", "4", "10", "47", "100", "104", "450", "7815", "0.1", "1/2", "R", "k", "K", "M", "u",
    "n", "p", "m", "E", "A", "B", "C", "D", "J", "F", "T", "V", "W", "H", "Hz", "mA", "+", "/", "-",
    " ", " ", "x", "%", "±5%", "LOG", "1N47", "BZX79C", "RN60D", "RC07GF", "2A", "1H", "D-9",
    "red ", "violet ", "yellow ", "black ", "white ", "pink ", "AGC", "78L", "S14K", "14D", "VAC"
  };

  private static final int MARKS = 1500;

  static Stream<PartClass> classes() {
    return Stream.of(PartClass.values());
  }

  private static String mark(Random random) {
    StringBuilder mark = new StringBuilder();
    for (int left = 1 + random.nextInt(6); left > 0; left--) {
      mark.append(PIECES[random.nextInt(PIECES.length)]);
    }
    return mark.toString();
  }

  /** Only an outcome that says so carries another quantity; and only volts are ever negative. */
  @ParameterizedTest
  @EnumSource(PartClass.class)
  void reading_isOfTheQuantityTheClassHas(PartClass part) {
    Random random = new Random(part.name().hashCode());
    for (int i = 0; i < MARKS; i++) {
      String mark = mark(random);
      MarkingReadings<ValueReading> answer = ComponentValues.read(mark, part);
      boolean read = answer.outcome() == MarkingReadings.Outcome.READ;
      for (ValueReading each : answer.readings()) {
        assertThat(each.amount().quantity() == part.quantity())
            .as("%s: %s", mark, each)
            .isEqualTo(read);
        assertThat(each.amount().value() >= 0 || part == PartClass.REGULATOR).as(mark).isTrue();
        assertThat(each.why()).isNotBlank();
      }
    }
  }

  /** Six figures are written, so that reading back may differ in the seventh. */
  @ParameterizedTest
  @MethodSource("classes")
  void writtenValue_readsBack(PartClass part) {
    Random random = new Random(~part.name().hashCode());
    for (int i = 0; i < MARKS; i++) {
      String mark = mark(random);
      MarkingReadings<ValueReading> answer = ComponentValues.read(mark, part);
      if (answer.outcome() == MarkingReadings.Outcome.READ) {
        answer.readings().stream()
            .map(ValueReading::amount)
            .filter(amount -> amount.value() > 0 && amount.value() < 1e9)
            .filter(amount -> amount.value() >= 1e-12)
            .forEach(amount -> assertReadsBack(mark, amount, part));
      }
    }
  }

  private static void assertReadsBack(String mark, Amount amount, PartClass part) {
    assertThat(ComponentValues.read(amount.text(), part).readings())
        .as("%s as %s", mark, amount.text())
        .anyMatch(back -> Math.abs(back.amount().value() / amount.value() - 1) < 1e-5);
  }
}
