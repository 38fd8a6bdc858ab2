package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.inspect;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.blank;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;

class PictureChangedTest {
  private static final Check CHECK = new PictureChanged();

  @Test
  void fires_whereTheFileIsAnother() {
    List<Finding> findings =
        inspect(
            CHECK,
            blank(),
            picture -> Optional.of(picture.id().equals(PAGE) ? "f".repeat(64) : picture.sha256()));
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).severity()).isEqualTo(Severity.WARNING);
    assertThat(findings.get(0).message()).contains("Page 1", "pages/page-1.pdf");
  }

  @Test
  void isQuiet_whereTheFileIsTheSameOrMissing() {
    assertQuiet(CHECK, blank());
    assertThat(inspect(CHECK, blank(), picture -> Optional.empty())).isEmpty();
  }
}
