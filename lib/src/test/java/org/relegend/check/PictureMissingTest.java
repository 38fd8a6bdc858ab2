package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.inspect;
import static org.relegend.map.BoardMapSamples.TOP;
import static org.relegend.map.BoardMapSamples.blank;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

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

  @Test
  void isQuiet_whereEachFileIsThere() {
    assertQuiet(CHECK, blank());
    assertThat(inspect(CHECK, blank(), picture -> Optional.of("f".repeat(64)))).isEmpty();
  }
}
