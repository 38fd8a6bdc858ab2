package org.relegend.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.blank;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no tables, and names that mislead: one clear message each. */
class HostileTablesTest {
  private static void assertRefused(byte[] parts, String message) {
    Map<TableSort, TableSource> sources =
        Map.of(TableSort.PARTS, new TableSource("parts.csv", parts));
    assertThatThrownBy(
            () -> TableImport.plan(blank(), sources, TableSamples.by("ann", TableSamples.MONDAY)))
        .isInstanceOfSatisfying(
            TableException.class, refused -> assertThat(refused.count()).isEqualTo(1))
        .hasMessageStartingWith("parts.csv")
        .hasMessageContaining(message)
        .message()
        .hasSizeLessThan(500)
        .doesNotContain("\u0000", "\u202e", "\u001b");
  }

  private static void assertRefused(String parts, String message) {
    assertRefused(parts.getBytes(StandardCharsets.UTF_8), message);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\ufeff", "\n\n\n", ",,,\n,,\n"})
  void empty_isRefused(String text) {
    assertRefused(text, "a table begins with a row of column names");
  }

  @Test
  void singleLineOfTenMegabytes_isRefused() {
    assertRefused("R1,".repeat(3_500_000), "line 1: is longer than 100,000 characters");
    assertRefused("designator\n" + "x".repeat(10_000_000), "line 2: is longer than");
  }

  @Test
  void randomBytes_areRefused() {
    byte[] bytes = new byte[100_000];
    new Random(5).nextBytes(bytes);
    assertRefused(bytes, "line ");
  }

  @Test
  void knownBinaryFiles_areRefused() {
    assertRefused(new byte[] {0x50, 0x4B, 3, 4, 0, 0}, "export it as CSV");
    assertRefused(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0}, "export it as CSV");
    assertRefused("designator\nR1\u0000", "line 2: holds a NUL character");
    assertRefused(
        "designator\nR1".getBytes(StandardCharsets.UTF_16LE), "line 1: holds a NUL character");
    assertRefused(new byte[] {'d', '\n', (byte) 0x81}, "line 2: holds bytes that are no windows");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "designator,kind\\nR1,cap,5|line 2: has 3 cells where the header has 2",
        "designator,kind\\n\\nR1|line 3: has 1 cell where the header has 2",
        "kind,value\\ncap,5|line 1, column designator: is missing",
        "designator,kind,kind\\nR1,,|line 1, column kind: stands twice",
        "designator,value\\nR1,\"4k7\\nR2,10k|line 2: a quotation mark opens in this row",
        "designator,value\\nR0,1\\nR1,\"4k7\"x\\nR2,10k|line 3: a quotation mark opens in this row",
        "designator\\n\"R\"\"1\"|line 2, column designator: the designator \"R\"1\" holds a quotation",
        "designator\\nR/1|column designator: the designator \"R/1\" holds a slash",
        "designator\\n\"R\\n1\"|holds a line break",
        "designator\\nR\u202e1|holds the character U+202E",
        "designator\\nR\u200b1|holds the character U+200B",
        "designator,value\\nR1,4\u001bk7|column value: the value",
        "designator,board\\nR1,a.b|column board: the board name \"a.b\" holds a dot",
        "designator\\nR1\\nR1|line 3, column designator: part R1 of board main stands in line 2",
        "designator,kind\\n,cap|line 2, column designator: a designator can't be empty"
      })
  void wrongCell_isNamedWithItsPlace(String text, String message) {
    assertRefused(text.replace("\\n", "\n"), message);
  }

  @Test
  void longCell_isRefused() {
    String cell = "line\n".repeat(5_000);
    assertRefused(
        "designator,note\nR1,\"" + cell + "\"", "line 2, column note: is longer than 20,000");
  }

  @Test
  void file_largerThanAnyTableOrMissing_isRefused(@TempDir Path folder) throws IOException {
    Path large = folder.resolve("large.csv");
    Files.write(large, new byte[TableSource.MAX_BYTES + 1]);
    assertThatThrownBy(() -> TableSource.of(large)).hasMessageContaining("larger than the 16 MiB");
    assertThatThrownBy(() -> TableSource.of(folder.resolve("none.csv")))
        .hasMessageContaining("there is no such file");
    assertThatThrownBy(() -> TableSource.of(folder)).hasMessageContaining("can't be read");
  }
}
