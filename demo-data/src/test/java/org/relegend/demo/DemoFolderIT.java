package org.relegend.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Draws everything anew, photos too: about 45 s of one processor's time. */
class DemoFolderIT {
  @Test
  void everyFileDrawnAnew_hasTheCommittedBytes() throws IOException {
    Map<String, byte[]> files = DemoFolder.files();
    assertThat(files).hasSize(11);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      assertThat(file.getValue()).as(file.getKey()).isEqualTo(Committed.file(file.getKey()));
    }
  }
}
