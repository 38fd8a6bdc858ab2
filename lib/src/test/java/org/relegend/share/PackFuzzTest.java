package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A short run of the fuzzer; the long one is {@link PackFuzz}'s main program. */
@Tag("long")
class PackFuzzTest {
  @TempDir private Path temp;

  @Test
  void damagedPacksAndMaps_comeToDeclaredErrors_andNothingElse() throws Exception {
    PackFuzz.Outcome outcome = new PackFuzz(temp).run(1, 600);
    assertThat(outcome.refused()).isGreaterThan(400);
  }
}
