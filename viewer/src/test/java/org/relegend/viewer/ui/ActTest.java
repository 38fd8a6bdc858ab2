package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

class ActTest {
  @Test
  void noKey_isThatOfTwoActs() {
    List<KeyStroke> keys = Stream.of(Act.values()).flatMap(act -> act.key().stream()).toList();
    assertThat(keys).doesNotHaveDuplicates().hasSizeGreaterThan(40);
  }

  @Test
  void everyAct_hasItsText() {
    for (Act act : Act.values()) {
      assertThat(act.text()).isNotBlank();
    }
  }
}
