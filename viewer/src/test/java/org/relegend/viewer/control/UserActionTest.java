package org.relegend.viewer.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

class UserActionTest {
  @Test
  void noKey_isThatOfTwoActs() {
    List<KeyStroke> keys =
        Stream.of(UserAction.values()).flatMap(act -> act.key().stream()).toList();
    assertThat(keys).doesNotHaveDuplicates().hasSizeGreaterThan(40);
  }

  @Test
  void everyAct_hasItsText() {
    for (UserAction act : UserAction.values()) {
      assertThat(act.text()).isNotBlank();
    }
  }
}
