package org.relegend.share;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.Table;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PhotoPrivacy;
import org.relegend.scan.PictureException;
import org.relegend.scan.Progress;
import org.relegend.store.Digests;
import org.relegend.store.MapFolder;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;

/**
 * Writes a map into one file to give away: a ZIP archive (PKWARE APPNOTE) that begins with a
 * manifest of SHA-256 digests. Equal maps and photos give equal bytes: the order of entries, their
 * times and their packing are fixed.
 */
public final class PackWriter {
  /** The ending of packs. */
  public static final String ENDING = ".relegend-pack";

  /**
   * Not the first instant that ZIP knows: Java takes that for "unknown" and writes another field.
   */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

  private final MapFolder folder;
  private final PackOptions options;
  private final Progress progress;
  private final Path work;
  private final List<String> wentIn = new ArrayList<>();
  private final List<String> stayedOut = new ArrayList<>();

  /** The files to pack, by their names in the pack. */
  private final Map<String, Path> files = new TreeMap<>();

  private PackWriter(MapFolder folder, PackOptions options, Progress progress, Path work) {
    this.folder = folder;
    this.options = options;
    this.progress = progress;
    this.work = work;
  }

  /**
   * Writes a pack.
   *
   * @param target a file that isn't there yet
   * @throws ShareException where it can't be written, a photo can't be stripped, or a text that
   *     must not be in it turns up
   * @throws StoreException where a file of the map can't be read
   */
  public static PackReport write(
      MapFolder folder, Path target, PackOptions options, Progress progress)
      throws ShareException, StoreException {
    Path absolute = target.toAbsolutePath();
    if (Files.exists(absolute)) {
      throw new ShareException(target, "there is a file of this name already. Name a new one.");
    }
    Path work;
    try {
      work = Files.createTempDirectory(parent(absolute, target), ".relegend-");
    } catch (IOException e) {
      throw notWritten(target, e);
    }
    try {
      return new PackWriter(folder, options, progress, work).written(absolute);
    } catch (IOException e) {
      throw notWritten(target, e);
    } finally {
      remove(work, target);
    }
  }

  private static Path parent(Path absolute, Path target) throws ShareException {
    Path parent = absolute.getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      throw new ShareException(target, "there is no such folder to write to. Check the path.");
    }
    return parent;
  }

  private static void remove(Path work, Path target) throws ShareException {
    try {
      StagedFolder.delete(work);
    } catch (IOException e) {
      throw notWritten(target, e);
    }
  }

  private static ShareException notWritten(Path target, IOException e) {
    return new ShareException(
        target, "it can't be written (%s). Choose another place.".formatted(e.getMessage()), e);
  }

  private PackReport written(Path target) throws IOException, ShareException, StoreException {
    BoardMap map = folder.map();
    Anonymizer anonymous = new Anonymizer(map, options);
    BoardMap bare = anonymous.of(map.with(MapTables.PICTURES, pictures(map)));
    bare = withoutPictures(bare, map);
    tell(map, bare, anonymous);
    byte[] text = MapFormat.write(bare);
    refuseNever(text, target);
    Path pack = work.resolve("pack");
    List<Manifest.Entry> entries = new ArrayList<>();
    entries.add(new Manifest.Entry(MapFolder.MAP_FILE, text.length, Digests.sha256(text)));
    for (Map.Entry<String, Path> file : files.entrySet()) {
      entries.add(
          new Manifest.Entry(
              file.getKey(), Files.size(file.getValue()), Digests.sha256(file.getValue())));
    }
    try (ZipOutputStream zip =
        new ZipOutputStream(
            new BufferedOutputStream(Files.newOutputStream(pack), 1 << 16),
            StandardCharsets.UTF_8)) {
      zip.setLevel(Deflater.BEST_SPEED);
      put(zip, Manifest.NAME, new Manifest(map.id(), entries).bytes());
      put(zip, MapFolder.MAP_FILE, text);
      for (Map.Entry<String, Path> file : files.entrySet()) {
        store(zip, file.getKey(), file.getValue());
      }
    }
    long bytes = Files.size(pack);
    try {
      Files.move(pack, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(pack, target);
    }
    return new PackReport(bytes, Digests.sha256(text), wentIn, stayedOut);
  }

  private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(NO_TIME);
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }

  /** Photos are packed already: they are stored as they are. */
  private static void store(ZipOutputStream zip, String name, Path file) throws IOException {
    CRC32 sum = new CRC32();
    byte[] piece = new byte[1 << 16];
    try (InputStream in = Files.newInputStream(file)) {
      for (int n = in.read(piece); n >= 0; n = in.read(piece)) {
        sum.update(piece, 0, n);
      }
    }
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(NO_TIME);
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(Files.size(file));
    entry.setCrc(sum.getValue());
    zip.putNextEntry(entry);
    copy(file, zip);
    zip.closeEntry();
  }

  private static void copy(Path file, OutputStream out) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      in.transferTo(out);
    }
  }

  /** The pictures as they are in the pack, their files made ready; those that stay are kept too. */
  private Table<org.relegend.map.PictureId, Picture> pictures(BoardMap map)
      throws ShareException, StoreException {
    List<Picture> packed = new ArrayList<>();
    int done = 0;
    for (Picture picture : map.pictures()) {
      Path file = folder.fileOf(picture);
      if (picture instanceof Page) {
        packed.add(picture);
        page(picture, file);
      } else if (stays(picture)) {
        stayedOut.add("photo " + picture.caption() + " and what was placed on it");
      } else if (!Files.isRegularFile(file)) {
        packed.add(picture);
        stayedOut.add("photo " + picture.caption() + ": its file is not in the map's folder");
      } else {
        packed.add(photo((Photo) picture, file));
      }
      progress.at((double) ++done / map.pictures().size());
    }
    return Table.of(packed);
  }

  private boolean stays(Picture photo) {
    return options.photos().isPresent() && !options.photos().get().contains(photo.id());
  }

  private void page(Picture page, Path file) throws ShareException, StoreException {
    String text = "page " + page.caption();
    if (!options.pages()) {
      stayedOut.add(text + ": its digest, its size and the places on it went in");
    } else if (!Files.isRegularFile(file)) {
      stayedOut.add(text + ": its file is not in the map's folder");
    } else if (!Digests.sha256(file).equals(page.sha256())) {
      throw new ShareException(
          file, "the file of this page was changed since it was added. Add it again.");
    } else {
      files.put(page.file(), file);
      wentIn.add(text + ", its file unchanged");
    }
  }

  private Photo photo(Photo photo, Path file) throws ShareException, StoreException {
    try {
      PhotoFile probed = PhotoFile.probe(file);
      String name = named(photo.file(), PhotoPrivacy.ending(probed));
      Path bare = work.resolve("photo-" + files.size());
      PhotoPrivacy.strip(probed, bare, Progress.UNWATCHED);
      files.put(name, bare);
      wentIn.add("photo " + photo.caption() + " as " + name + ", its pixels alone");
      return new Photo(
          photo.id(),
          photo.title(),
          name,
          photo.board(),
          photo.side(),
          photo.turn(),
          Digests.sha256(bare),
          photo.width(),
          photo.height());
    } catch (PictureException unfit) {
      throw new ShareException(
          file,
          "this photo can't be packed without its notes: %s. Leave it out, or save it anew."
              .formatted(unfit.getMessage()),
          unfit);
    }
  }

  private static String named(String file, String ending) {
    String lower = file.toLowerCase(Locale.ROOT);
    boolean fits = lower.endsWith("." + ending) || ending.equals("jpg") && lower.endsWith(".jpeg");
    return fits ? file : file + "." + ending;
  }

  /** Without what was placed on, outlined on or lined up with photos that stay out. */
  private static BoardMap withoutPictures(BoardMap bare, BoardMap map) {
    BoardMap result = bare;
    for (Picture picture : map.pictures()) {
      if (!bare.pictures().has(picture.id())) {
        result = result.withoutPicture(picture.id());
      }
    }
    return result;
  }

  private void tell(BoardMap map, BoardMap bare, Anonymizer anonymous) {
    wentIn.add(
        "%d parts, %d nets, %d placements, %d hazard zones"
            .formatted(
                bare.parts().size(),
                bare.nets().size(),
                bare.placements().size(),
                bare.zones().size()));
    int zones = map.zones().size() - bare.zones().size();
    if (zones > 0) {
      stayedOut.add(
          "%d hazard zones, drawn on photos that stayed out: the pack doesn't warn there"
              .formatted(zones));
    }
    anonymous
        .names()
        .forEach(
            (name, alias) -> {
              if (name.equals(alias)) {
                wentIn.add("the name \"%s\" of who stands for things".formatted(name));
              } else {
                stayedOut.add("the name \"%s\": called \"%s\" in the pack".formatted(name, alias));
              }
            });
    if (anonymous.notes() > 0) {
      stayedOut.add(anonymous.notes() + " notes");
    }
    if (!map.clashes().isEmpty()) {
      stayedOut.add(map.clashes().size() + " undecided clashes");
    }
    stayedOut.add("bench jobs, readings, and every other file in the map's folder");
  }

  private void refuseNever(byte[] text, Path target) throws ShareException, IOException {
    for (String never : options.never()) {
      List<String> where = new ArrayList<>();
      if (new String(text, StandardCharsets.UTF_8)
          .toLowerCase(Locale.ROOT)
          .contains(never.toLowerCase(Locale.ROOT))) {
        where.add("the map");
      }
      for (String name : files.keySet()) {
        if (name.toLowerCase(Locale.ROOT).contains(never.toLowerCase(Locale.ROOT))) {
          where.add(name);
        }
      }
      if (!where.isEmpty()) {
        throw new ShareException(
            target,
            "\"%s\" must not be in it and is in %s: rename it there. Nothing was written."
                .formatted(never, String.join(" and in ", where)));
      }
    }
  }
}
