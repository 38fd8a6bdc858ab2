package org.relegend.viewer.tile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import org.jspecify.annotations.Nullable;
import org.relegend.scan.PdfPages;
import org.relegend.scan.PictureException;
import org.relegend.store.Digests;
import org.relegend.store.StoreException;

/** A PDF and the one thread that may use it. Opened when first needed. */
final class OpenPdf implements Executor {
  private final Path file;
  private final ExecutorService thread;
  private @Nullable PdfPages pages;
  private String sha256 = "";

  OpenPdf(Path file, ExecutorService thread) {
    this.file = file;
    this.thread = thread;
  }

  @Override
  public void execute(Runnable work) {
    thread.execute(work);
  }

  /**
   * The pages; to be called on the document's thread only.
   *
   * @param expected the digest that the file should have
   */
  PdfPages pages(String expected) throws PictureException {
    PdfPages open = pages;
    if (open == null) {
      open = PdfPages.open(file);
      pages = open;
      sha256 = digest();
    }
    if (!sha256.equals(expected)) {
      throw new PictureException(
          PictureException.Kind.DAMAGED,
          file,
          "the file is no longer the one that was added, so marks may lie wrong on it: put that one"
              + " back, or add this one as another picture");
    }
    return open;
  }

  private String digest() throws PictureException {
    try {
      return Digests.sha256(file);
    } catch (StoreException unreadable) {
      throw new PictureException(
          PictureException.Kind.UNREADABLE, file, "the file can't be read any more", unreadable);
    }
  }

  /** Closes the file once what runs is done. */
  void close() {
    thread.execute(
        () -> {
          PdfPages open = pages;
          if (open != null) {
            try {
              open.close();
            } catch (IOException lost) {
              return; // it was only read
            }
          }
        });
    thread.shutdown();
  }
}
