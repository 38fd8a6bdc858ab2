package org.relegend.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.relegend.store.StoreException;
import org.relegend.store.WholeFile;

/** Finished sheets. */
public final class FinishedSheets {
  private final byte[] pdf;
  private final int pages;
  private final List<String> troubles;

  FinishedSheets(byte[] pdf, int pages, List<String> troubles) {
    this.pdf = pdf;
    this.pages = pages;
    this.troubles = List.copyOf(troubles);
  }

  public byte[] pdf() {
    return pdf.clone();
  }

  public int pages() {
    return pages;
  }

  /** Pictures that could not be read, one sentence each; their frames are empty. */
  public List<String> troubles() {
    return troubles;
  }

  /**
   * Writes them to a file: all or nothing. Sheets printed before are replaced, any other file is
   * refused, since a wrong name must not cost anybody a schematic.
   *
   * @throws StoreException where that can't be, with what to do
   */
  public void writeTo(Path file) throws StoreException {
    requireFree(file);
    WholeFile.write(file, pdf);
  }

  /**
   * Looks whether sheets can be written there, before the work of printing them.
   *
   * @throws StoreException where they can't, with what to do
   */
  public static void requireFree(Path file) throws StoreException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      throw new StoreException(
          StoreException.Kind.MISSING,
          file,
          "there is no folder %s. Make it first.".formatted(folder));
    }
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
  }

  private static boolean isOurs(Path file) {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return SheetDocument.PRODUCER.equals(document.getDocumentInformation().getProducer());
    } catch (IOException | RuntimeException unreadable) {
      return false;
    }
  }
}
