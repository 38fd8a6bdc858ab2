package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** SHA-256 against the worked examples that NIST publishes for FIPS 180-4. */
class DigestsTest {
  @TempDir private Path temp;

  @Test
  void digests_areThoseOfThePublishedExamples() throws Exception {
    String[][] examples = {
      {"abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"},
      {
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
      }
    };
    for (String[] example : examples) {
      byte[] message = example[0].getBytes(StandardCharsets.US_ASCII);
      assertThat(Digests.sha256(message)).isEqualTo(example[1]);
      assertThat(Digests.sha256(Files.write(temp.resolve("message"), message)))
          .isEqualTo(example[1]);
    }
  }
}
