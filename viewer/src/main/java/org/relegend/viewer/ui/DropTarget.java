package org.relegend.viewer.ui;

import java.awt.Point;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;
import org.relegend.share.PackReader;
import org.relegend.store.MapFolder;
import org.relegend.viewer.control.Messages;

/**
 * Takes what is dropped on the window: a map's folder is opened, a pack unpacked or merged; a PDF
 * becomes a page; an image a page where it is dropped on the page, else a photo.
 */
final class DropTarget extends TransferHandler {
  private final transient MapWindow window;
  private final transient PictureImport adding;

  DropTarget(MapWindow window, PictureImport adding) {
    this.window = window;
    this.adding = adding;
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
  }

  @Override
  public boolean importData(TransferSupport support) {
    try {
      Object dropped = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      List<Path> files = new ArrayList<>();
      for (Object file : (List<?>) dropped) {
        files.add(((File) file).toPath());
      }
      boolean onPage = support.isDrop() && isOnPage(support.getDropLocation().getDropPoint());
      SwingUtilities.invokeLater(() -> take(files, onPage));
      return true;
    } catch (UnsupportedFlavorException | IOException problem) {
      window.messages().fail(problem);
      return false;
    }
  }

  private boolean isOnPage(Point inWindow) {
    return window
        .sitting()
        .map(sitting -> sitting.panel().page())
        .filter(page -> page.contains(SwingUtilities.convertPoint(window, inWindow, page)))
        .isPresent();
  }

  /** Opens or adds what was dropped. */
  void take(List<Path> files, boolean onPage) {
    for (Path file : files) {
      boolean folder = file.toFile().isDirectory();
      Path parent = file.toAbsolutePath().getParent();
      if (folder || file.endsWith(MapFolder.MAP_FILE) && parent != null) {
        window.open(folder || parent == null ? file : parent);
        return;
      }
    }
    for (Path file : files) {
      if (PackReader.isPack(file)) {
        window.takePack(file);
        return;
      }
    }
    if (window.sitting().isEmpty()) {
      window.messages().say(Messages.of("drop.nomap"));
      return;
    }
    for (Path file : files) {
      String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
      if (onPage || name.endsWith(".pdf")) {
        adding.addPages(file);
      } else {
        adding.addPhoto(file);
      }
    }
  }
}
