package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.check.CheckCase.subjects;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.net;
import static org.relegend.map.BoardMapSamples.with;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;

class NetNameTwiceTest {
  private static final Check CHECK = new NetNameTwice();

  @Test
  void fires_forTwoNetsOfOneName() {
    Finding finding = only(CHECK, with(divider(), net("X1").withName("VP")));
    assertThat(finding.message()).isEqualTo("There are 2 nets called VP");
    assertThat(subjects(finding)).containsExactly("net:VP", "net:X1");
  }

  @Test
  void isQuiet_whereNamesDiffer() {
    assertQuiet(CHECK, divider());
  }
}
