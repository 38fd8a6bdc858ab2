package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.inspect;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.blank;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.PictureId;

class PictureMissingTest {
  private static final Check CHECK = new PictureMissing();

  @Test
  void fires_whereTheFileCannotBeRead() {
    List<Finding> findings =
        inspect(
            CHECK,
            blank(),
            picture -> picture.id().equals(TOP) ? Optional.empty() : Optional.of(picture.sha256()));
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).severity()).isEqualTo(Severity.ERROR);
    assertThat(findings.get(0).message()).contains("Component side", "photos/component.jpg");
    assertThat(findings.get(0).picture()).contains(TOP);
  }

  /** Packs go without their pages: that is no error of the map's. */
  @Test
  void pageWithoutItsFile_isInformation() {
    Page page = new Page(new PictureId("page-1"), "One", "pages/a.pdf", 1, "a".repeat(64), 10, 10);
    List<Finding> findings =
        inspect(
            CHECK,
            blank().with(MapTables.PICTURES, blank().pictures().with(page)),
            picture -> picture instanceof Page ? Optional.empty() : Optional.of("f".repeat(64)));
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).severity()).isEqualTo(Severity.INFORMATION);
    assertThat(findings.get(0).remedy()).contains("pack", "line the two up");
  }

  @Test
  void isQuiet_whereEachFileIsThere() {
    assertQuiet(CHECK, blank());
    assertThat(inspect(CHECK, blank(), picture -> Optional.of("f".repeat(64)))).isEmpty();
  }
}
