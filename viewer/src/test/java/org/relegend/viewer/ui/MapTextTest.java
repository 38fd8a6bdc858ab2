package org.relegend.viewer.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import javax.swing.plaf.basic.BasicHTML;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.BoardId;
import org.relegend.map.Designator;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;

/** What Swing's labels would lay out as a web page, and load pictures for, can't be in a map. */
class MapTextTest {
  @ParameterizedTest
  @ValueSource(strings = {"<html>", "<HTML><img src='http://localhost/x'>", "<hTmL>x"})
  void textThatSwingTakesForAPage_isRefused(String text) {
    assertThat(BasicHTML.isHTMLString(text)).isTrue();
    Part part = Part.named(new PartId("R1"), new Designator("R1"), new BoardId("main"));
    assertThatThrownBy(() -> new NetId(text)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> part.withValue(text)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> part.withNote(text)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"<5 mV", "a <html>", "< html>", "<html"})
  void otherText_isTaken(String text) {
    assertThat(BasicHTML.isHTMLString(text)).isFalse();
    assertThat(new NetId(text).text()).isEqualTo(text);
  }
}
