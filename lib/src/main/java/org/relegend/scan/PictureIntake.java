package org.relegend.scan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.relegend.map.Board;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardTurn;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Side;
import org.relegend.store.Digests;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/**
 * Brings picture files into a map's folder: a photo upright, whatever its camera noted; a page as
 * it is. What comes back is the edit that puts them into the map; until it is made, the map knows
 * nothing of the files.
 */
public final class PictureIntake {
  /**
   * What a photo shows.
   *
   * @param title what people call it; the name of the file where it is empty
   */
  public record Shown(String title, BoardId board, Side side, BoardTurn turn) {}

  private final Path folder;
  private final BoardMap map;

  /**
   * @param folder of the map
   * @param map as it is now, for names that are free
   */
  public PictureIntake(Path folder, BoardMap map) {
    this.folder = folder;
    this.map = map;
  }

  /**
   * Adds a photo of one side of a board; a board that the map doesn't have is added with it.
   *
   * @throws PictureException where it is no photo that can be read, or it can't be written here;
   *     nothing is left in the folder then
   * @throws StoreException where it can't be read back
   */
  public EditGroup photo(Path file, Shown shown, Progress progress)
      throws PictureException, StoreException {
    PhotoFile photo = PhotoFile.probe(file);
    PictureId id = freshId(shown.title().isEmpty() ? stem(file) : shown.title(), "photo");
    String name = freshFile(MapFolder.PHOTOS, id, UprightPhoto.ending(photo));
    Path target = prepared(name);
    UprightPhoto.write(photo, target, progress);
    List<Edit> steps = new ArrayList<>();
    if (!map.boards().has(shown.board())) {
      steps.add(MapTables.BOARDS.put(Board.named(shown.board())));
    }
    steps.add(
        MapTables.PICTURES.put(
            new Photo(
                id,
                titleOf(shown.title(), file),
                name,
                shown.board(),
                shown.side(),
                shown.side() == Side.SOLDER ? shown.turn() : BoardTurn.UNKNOWN,
                Digests.sha256(target),
                photo.seenWidth(),
                photo.seenHeight())));
    return new EditGroup("Add photo " + titleOf(shown.title(), file), steps);
  }

  /**
   * How many pages a file has: 1 for a scan that is an image.
   *
   * @throws PictureException where it can't be read
   */
  public static int pagesIn(Path file) throws PictureException {
    if (PictureFormat.of(file) != PictureFormat.PDF) {
      PhotoFile.probe(file);
      return 1;
    }
    try (PdfPages pages = PdfPages.open(file)) {
      return pages.count();
    } catch (IOException problem) {
      throw PhotoFile.damaged(file, problem);
    }
  }

  /**
   * Adds pages of the schematic from a PDF or a scanned image; the file is kept once, however many
   * of its pages are added and when.
   *
   * @param title what people call them, with the number behind where they are several; the name of
   *     the file where it is empty
   * @param numbers of the pages, from 1
   * @throws PictureException where the file can't be read or has no such page, or it can't be
   *     written here; nothing is left in the folder then
   * @throws StoreException where it can't be read back
   */
  public EditGroup pages(Path file, String title, List<Integer> numbers, Progress progress)
      throws PictureException, StoreException {
    List<PdfPages.Size> sizes = sizes(file, numbers);
    String whole = titleOf(title, file);
    Optional<String> known = kept(Digests.sha256(file));
    PictureId first = freshId(whole, "page");
    String name = known.isPresent() ? known.get() : copied(file, first, progress);
    String digest = Digests.sha256(folder.resolve(name));
    List<Edit> steps = new ArrayList<>();
    BoardMap growing = map;
    for (int i = 0; i < numbers.size(); i++) {
      int number = numbers.get(i);
      String own = numbers.size() == 1 ? whole : whole + " " + number;
      Page page =
          new Page(
              new PictureIntake(folder, growing).freshId(own, "page"),
              own,
              name,
              number,
              digest,
              sizes.get(i).width(),
              sizes.get(i).height());
      growing = growing.with(MapTables.PICTURES, growing.pictures().with(page));
      steps.add(MapTables.PICTURES.put(page));
    }
    return new EditGroup("Add page " + whole, steps);
  }

  private static List<PdfPages.Size> sizes(Path file, List<Integer> numbers)
      throws PictureException {
    List<PdfPages.Size> sizes = new ArrayList<>();
    if (PictureFormat.of(file) == PictureFormat.PDF) {
      try (PdfPages pages = PdfPages.open(file)) {
        for (int number : numbers) {
          sizes.add(pages.size(number));
        }
      } catch (IOException problem) {
        throw PhotoFile.damaged(file, problem);
      }
      return sizes;
    }
    PhotoFile scan = PhotoFile.probe(file);
    for (int number : numbers) {
      if (number != 1) {
        throw new PictureException(
            PictureException.Kind.NO_SUCH_PAGE,
            file,
            "an image has one page, so there is no page " + number);
      }
      sizes.add(new PdfPages.Size(scan.seenWidth(), scan.seenHeight()));
    }
    return sizes;
  }

  /** The file of that content, if the map has it already. */
  private Optional<String> kept(String digest) {
    return map.pictures().stream()
        .filter(picture -> picture.sha256().equals(digest))
        .map(Picture::file)
        .filter(name -> Files.exists(folder.resolve(name)))
        .findFirst();
  }

  private String copied(Path file, PictureId id, Progress progress) throws PictureException {
    if (PictureFormat.of(file) != PictureFormat.PDF) {
      PhotoFile scan = PhotoFile.probe(file);
      String name = freshFile(MapFolder.PAGES, id, UprightPhoto.ending(scan));
      UprightPhoto.write(scan, prepared(name), progress);
      return name;
    }
    String name = freshFile(MapFolder.PAGES, id, "pdf");
    Path target = prepared(name);
    try {
      Files.copy(file, target);
      return name;
    } catch (IOException problem) {
      target.toFile().delete();
      throw notWritten(target, problem);
    }
  }

  private Path prepared(String name) throws PictureException {
    Path target = folder.resolve(name);
    try {
      Files.createDirectories(target.getParent());
      return target;
    } catch (IOException problem) {
      throw notWritten(target, problem);
    }
  }

  private static PictureException notWritten(Path target, IOException problem) {
    return new PictureException(
        PictureException.Kind.NOT_WRITTEN,
        target,
        "it can't be written (%s)".formatted(problem.getMessage()),
        problem);
  }

  private static String titleOf(String title, Path file) {
    return title.isEmpty() ? stem(file) : title;
  }

  private static String stem(Path file) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /** A free id from a title: letters, digits and dashes, so that it can be a file's name too. */
  private PictureId freshId(String title, String otherwise) {
    String base =
        title.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    String start = base.isEmpty() ? otherwise : base.substring(0, Math.min(60, base.length()));
    PictureId id = new PictureId(start);
    for (int i = 2; map.pictures().has(id); i++) {
      id = new PictureId(start + "-" + i);
    }
    return id;
  }

  private String freshFile(String where, PictureId id, String ending) {
    String name = "%s/%s.%s".formatted(where, id, ending);
    for (int i = 2; isTaken(name); i++) {
      name = "%s/%s-%d.%s".formatted(where, id, i, ending);
    }
    return name;
  }

  /** Also by a picture whose file isn't there, as where somebody else packed the map. */
  private boolean isTaken(String name) {
    return Files.exists(folder.resolve(name))
        || map.pictures().stream().anyMatch(picture -> picture.file().equals(name));
  }
}
