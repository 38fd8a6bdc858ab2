package org.relegend.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.relegend.store.StoreException;
import org.relegend.store.WholeFile;

/**
 * Finished sheets.
 *
 * @param troubles pictures that could not be read, one sentence each; their frames are empty
 */
public record Printed(byte[] pdf, int pages, List<String> troubles) {
  public Printed {
    pdf = pdf.clone();
    troubles = List.copyOf(troubles);
  }

  @Override
  public byte[] pdf() {
    return pdf.clone();
  }

  /**
   * Writes them to a file: all or nothing. Sheets printed before are replaced, any other file is
   * refused, since a wrong name must not cost anybody a schematic.
   *
   * @throws StoreException where that can't be, with what to do
   */
  public void writeTo(Path file) throws StoreException {
    if (Files.isDirectory(file)) {
      throw new StoreException(
          StoreException.Kind.EXISTS, file, "this is a folder. Name a file to print to.");
    }
    if (Files.exists(file) && !isOurs(file)) {
      throw new StoreException(
          StoreException.Kind.EXISTS,
          file,
          "there is a file of that name which wasn't printed by Relegend, and it was left alone."
              + " Choose another name.");
    }
    WholeFile.write(file, pdf);
  }

  private static boolean isOurs(Path file) {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return Press.PRODUCER.equals(document.getDocumentInformation().getProducer());
    } catch (IOException | RuntimeException unreadable) {
      return false;
    }
  }
}
