package org.relegend.share;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.Page;
import org.relegend.map.Picture;
import org.relegend.scan.PdfActions;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PictureException;
import org.relegend.scan.PictureFormat;
import org.relegend.scan.Progress;
import org.relegend.store.Digests;
import org.relegend.store.MapFolder;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;

/**
 * Takes what somebody else packed. The file may be anything: it is looked at from end to end before
 * a folder is made, and what isn't plainly a map with its pictures is refused. Nothing in a pack is
 * ever run.
 */
public final class PackReader implements AutoCloseable {
  private static final int MAX_MANIFEST = 1 << 20;

  private final Path file;
  private final PackArchive archive;
  private final Manifest manifest;
  private final BoardMap map;

  private PackReader(Path file, PackArchive archive, Manifest manifest, BoardMap map) {
    this.file = file;
    this.archive = archive;
    this.manifest = manifest;
    this.map = map;
  }

  /**
   * Opens a pack and reads its map; writes nothing.
   *
   * @throws ShareException where the file is no pack that can be taken
   * @throws StoreException where its map can't be read
   */
  public static PackReader open(Path file) throws ShareException, StoreException {
    PackArchive archive = PackArchive.open(file);
    try {
      Manifest manifest = manifest(file, archive);
      byte[] text = bytes(file, archive, entry(file, archive, MapFolder.MAP_FILE));
      BoardMap map = MapFormat.read(text, file.resolve(MapFolder.MAP_FILE));
      PackReader pack = new PackReader(file, archive, manifest, map);
      pack.check(text);
      return pack;
    } catch (ShareException | StoreException e) {
      archive.close();
      throw e;
    }
  }

  /** Whether a file is meant to be a pack, by its name. */
  public static boolean isPack(Path file) {
    return file.toString().endsWith(PackWriter.ENDING);
  }

  private static ShareException refused(Path file, String why) {
    return new ShareException(file, why + ". It is not taken; nothing was written.");
  }

  private static PackArchive.Entry entry(Path file, PackArchive archive, String name)
      throws ShareException {
    PackArchive.Entry entry = archive.entries().get(name);
    if (entry == null) {
      throw refused(file, "this is no pack of a board map: it has no " + name);
    }
    return entry;
  }

  private static byte[] bytes(Path file, PackArchive archive, PackArchive.Entry entry)
      throws ShareException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      archive.copy(entry, out);
    } catch (IOException e) {
      throw refused(file, "%s can't be read (%s)".formatted(entry.name(), e.getMessage()));
    }
    return out.toByteArray();
  }

  private static Manifest manifest(Path file, PackArchive archive) throws ShareException {
    PackArchive.Entry entry = entry(file, archive, Manifest.NAME);
    if (entry.size() > MAX_MANIFEST) {
      throw refused(file, "its manifest is too long");
    }
    try {
      return Manifest.parse(bytes(file, archive, entry));
    } catch (IllegalArgumentException e) {
      throw refused(file, String.valueOf(e.getMessage()));
    }
  }

  /** The manifest, the archive and the map must speak of the same files. */
  private void check(byte[] text) throws ShareException {
    Set<String> stated = new HashSet<>();
    stated.add(Manifest.NAME);
    Map<String, String> digests = digests();
    for (Manifest.Entry entry : manifest.files()) {
      PackArchive.Entry packed = entry(file, archive, entry.path());
      if (!stated.add(entry.path()) || packed.size() != entry.size()) {
        throw refused(file, "its manifest is wrong about " + entry.path());
      }
      boolean isMap = entry.path().equals(MapFolder.MAP_FILE);
      if (isMap && !Digests.sha256(text).equals(entry.sha256())
          || !isMap && !entry.sha256().equals(digests.get(entry.path()))) {
        throw refused(file, "the digest of %s is wrong".formatted(entry.path()));
      }
    }
    if (!stated.contains(MapFolder.MAP_FILE) || !stated.equals(archive.entries().keySet())) {
      throw refused(file, "there is more in it than its manifest tells");
    }
    if (!manifest.map().equals(map.id())) {
      throw refused(file, "its manifest tells of another map");
    }
  }

  /** What the map says its pictures' files are; one file can't be two. */
  private Map<String, String> digests() throws ShareException {
    Map<String, String> digests = new HashMap<>();
    for (Picture picture : map.pictures()) {
      String other = digests.putIfAbsent(picture.file(), picture.sha256());
      boolean placed =
          picture.file().startsWith(MapFolder.PAGES + "/")
              || picture.file().startsWith(MapFolder.PHOTOS + "/");
      if (other != null && !other.equals(picture.sha256()) || !placed) {
        throw refused(file, "its map has %s in the wrong place".formatted(picture.file()));
      }
    }
    return digests;
  }

  /** The map in the pack: the base of a later merge with its sender's. */
  public BoardMap map() {
    return map;
  }

  /**
   * Writes the map into a new folder.
   *
   * @return the pictures that are without a file
   * @throws ShareException where a file in the pack isn't what it should be
   * @throws StoreException where the folder can't be written; nothing of it is left then
   */
  public List<Picture> into(Path folder) throws ShareException, StoreException {
    return into(folder, List.of(), new Attestation(Evidence.MATCHED, "", Instant.EPOCH)).missing();
  }

  /**
   * What came of unpacking.
   *
   * @param missing pictures without a file
   * @param scans what became of the recipient's own
   */
  public record Unpacked(BoardMap map, List<Picture> missing, List<OwnScans.ScanOutcome> scans) {
    public Unpacked {
      missing = List.copyOf(missing);
      scans = List.copyOf(scans);
    }
  }

  /**
   * Writes the map into a new folder, with the recipient's own scans of what isn't in the pack.
   *
   * @param scans one that has the digest of an absent picture is put in its place at once, any
   *     other is lined up with the page that it shows
   * @param says who stands for such a line-up
   * @throws ShareException where a file in the pack isn't what it should be, or a scan can't be
   *     read
   * @throws StoreException where the folder can't be written; nothing of it is left then
   */
  public Unpacked into(Path folder, List<Path> scans, Attestation says)
      throws ShareException, StoreException {
    try (StagedFolder staging = StagedFolder.of(folder)) {
      for (Manifest.Entry entry : manifest.files()) {
        if (!entry.path().equals(MapFolder.MAP_FILE)) {
          write(entry, staging.folder().resolve(entry.path()));
        }
      }
      for (Picture picture : map.pictures()) {
        Path place = staging.folder().resolve(picture.file());
        if (Files.exists(place) && archive.entries().containsKey(picture.file())) {
          check(picture, place);
        }
      }
      OwnScans own = new OwnScans(staging.folder(), map, says);
      for (Path scan : scans) {
        own.take(scan, Progress.UNWATCHED);
      }
      Unpacked done = new Unpacked(own.map(), own.missing(), own.results());
      MapFolder.create(staging.folder(), own.map()).close();
      Files.deleteIfExists(staging.folder().resolve(MapFolder.LOCK_FILE));
      staging.commit();
      return done;
    } catch (PictureException unfit) {
      throw new ShareException(
          file, "%s Nothing was unpacked.".formatted(unfit.getMessage()), unfit);
    } catch (IOException e) {
      throw new ShareException(
          file, "it can't be unpacked to %s (%s)".formatted(folder, e.getMessage()), e);
    }
  }

  private void write(Manifest.Entry entry, Path place)
      throws IOException, ShareException, StoreException {
    Path parent = place.getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    try (OutputStream out = Files.newOutputStream(place)) {
      archive.copy(entry(file, archive, entry.path()), out);
    }
    if (!Digests.sha256(place).equals(entry.sha256())) {
      throw refused(file, "the digest of %s is wrong".formatted(entry.path()));
    }
  }

  /** A picture must be of a known kind, of the size that the map says, and do nothing. */
  private void check(Picture picture, Path place) throws ShareException {
    try {
      if (picture instanceof Page && PictureFormat.of(place) == PictureFormat.PDF) {
        Optional<String> action = PdfActions.in(place);
        if (action.isPresent()) {
          throw refused(
              file, "%s does more than show pages (%s)".formatted(picture.file(), action.get()));
        }
        return;
      }
      PhotoFile photo = PhotoFile.probe(place);
      if (photo.seenWidth() != picture.width() || photo.seenHeight() != picture.height()) {
        throw refused(file, "%s has another size than its map says".formatted(picture.file()));
      }
    } catch (PictureException unfit) {
      String text = String.valueOf(unfit.getMessage());
      String why =
          text.startsWith(place + ": ") ? text.substring(place.toString().length() + 2) : text;
      throw refused(file, "%s can't be taken: %s".formatted(picture.file(), why));
    }
  }

  @Override
  public void close() throws ShareException {
    archive.close();
  }
}
