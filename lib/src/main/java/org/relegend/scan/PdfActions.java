package org.relegend.scan;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Looks for what a PDF can do besides showing pages: scripts, starting programs, files inside it,
 * forms that are sent (ISO 32000-2, 12.6 and 7.11.4). Relegend runs none of it, but the file may be
 * opened elsewhere.
 */
public final class PdfActions {
  private static final Set<String> KEYS =
      Set.of(
          "JS", "JavaScript", "AA", "OpenAction", "EmbeddedFiles", "EF", "XFA", "RichMediaContent");
  private static final Set<String> ACTIONS =
      Set.of(
          "JavaScript",
          "Launch",
          "SubmitForm",
          "ImportData",
          "GoToR",
          "GoToE",
          "URI",
          "Rendition",
          "Movie",
          "Sound",
          "RichMediaExecute");
  private static final int MOST_OBJECTS = 200_000;

  private PdfActions() {}

  /**
   * The first such thing in the file, by its name in the standard, if there is any.
   *
   * @throws PictureException where it is no PDF that can be read
   */
  public static Optional<String> in(Path path) throws PictureException {
    try (PDDocument document = Loader.loadPDF(path.toFile())) {
      return first(document.getDocument().getTrailer());
    } catch (IOException | RuntimeException | StackOverflowError problem) {
      throw PhotoFile.damaged(path, problem);
    }
  }

  private static Optional<String> first(COSBase root) throws IOException {
    Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<COSBase> open = new ArrayDeque<>();
    open.add(root);
    while (!open.isEmpty()) {
      COSBase next = open.poll();
      COSBase value = next instanceof COSObject reference ? reference.getObject() : next;
      if (value == null || !seen.add(value)) {
        continue;
      }
      if (seen.size() > MOST_OBJECTS) {
        throw new IOException("it has too many objects to be looked through");
      }
      if (value instanceof COSArray array) {
        array.forEach(
            entry -> {
              if (entry != null) {
                open.add(entry);
              }
            });
      } else if (value instanceof COSDictionary dictionary) {
        Optional<String> found = in(dictionary);
        if (found.isPresent()) {
          return found;
        }
        dictionary.getValues().forEach(open::add);
      }
    }
    return Optional.empty();
  }

  private static Optional<String> in(COSDictionary dictionary) {
    for (COSName key : dictionary.keySet()) {
      boolean viewOnly =
          key.getName().equals("OpenAction")
              && dictionary.getDictionaryObject(key) instanceof COSArray; // where to open it
      if (KEYS.contains(key.getName()) && !viewOnly) {
        return Optional.of(key.getName());
      }
    }
    COSBase action = dictionary.getDictionaryObject(COSName.S);
    return action instanceof COSName name && ACTIONS.contains(name.getName())
        ? Optional.of(name.getName())
        : Optional.empty();
  }
}
