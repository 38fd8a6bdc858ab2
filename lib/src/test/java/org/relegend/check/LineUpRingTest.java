package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.inspect;
import static org.relegend.check.CheckCase.only;

import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.lineup.LinedUpMaps;
import org.relegend.lineup.Transform;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.Side;

class LineUpRingTest {
  private static final Check CHECK = new LineUpRing();

  private static BoardMap ring(Transform bent) {
    return new LinedUpMaps(1)
        .photo("solder", Side.SOLDER)
        .photo("other", Side.COMPONENT)
        .pairs("component", "solder", 8, 2)
        .pairs("component", "other", 8, 2)
        .pairs("solder", "other", 8, 2, bent)
        .map();
  }

  @Test
  void fires_forARingThatMissesItsBeginning() {
    BoardMap map = ring(Transform.shift(90, 0));
    Finding finding = only(CHECK, map);
    assertThat(finding.message()).contains("Component side", "solder", "other", "disagree");
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(
            inspect(
                CHECK,
                map.with(
                    MapTables.LINE_UPS,
                    map.lineUps()
                        .without(
                            PicturePairs.Key.of(new PictureId("other"), new PictureId("solder"))))))
        .isEmpty();
  }

  @Test
  void isQuiet_whereTheRingCloses() {
    assertQuiet(CHECK, ring(Transform.IDENTITY));
  }
}
