package org.relegend.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.NOON;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMapSamples;
import org.relegend.scan.Progress;
import org.relegend.store.StoreException;

class FinishedSheetsTest {
  @TempDir private Path folder;

  private static FinishedSheets printed(PaperSize paper) {
    return new MapSheets(Circuit.of(BoardMapSamples.divider()), picture -> Path.of("/nowhere"))
        .print(paper, List.of(), NOON, Progress.UNWATCHED);
  }

  @Test
  void sheets_areWritten_andReplaceSheets() throws Exception {
    Path file = folder.resolve("a.pdf");
    printed(PaperSize.A4).writeTo(file);
    printed(PaperSize.LETTER).writeTo(file);
    assertThat(Files.readAllBytes(file)).isEqualTo(printed(PaperSize.LETTER).pdf());
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(file);
    }
  }

  @Test
  void anotherFile_aFolder_andAMissingFolder_areRefusedWithOneLine() throws IOException {
    Path schematic = folder.resolve("schematic.pdf");
    Files.copy(Sheets.DEMO.resolve("pages/schematic.pdf"), schematic);
    Path text = Files.writeString(folder.resolve("notes.pdf"), "my notes");
    byte[] before = Files.readAllBytes(schematic);
    for (Path refused : List.of(schematic, text, folder, folder.resolve("no/such.pdf"))) {
      assertThatThrownBy(() -> printed(PaperSize.A4).writeTo(refused))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining(refused.toString())
          .satisfies(failure -> assertThat(failure.getMessage()).doesNotContain("\n"));
    }
    assertThat(Files.readAllBytes(schematic)).isEqualTo(before);
    assertThat(text).hasContent("my notes");
  }
}
