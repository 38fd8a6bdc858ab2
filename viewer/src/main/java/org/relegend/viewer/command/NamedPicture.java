package org.relegend.viewer.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.relegend.lineup.Extent;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.scan.MatchImage;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PictureException;
import org.relegend.scan.Progress;
import org.relegend.store.MapFolder;

/**
 * A picture that was named in a command: one of the map, or the file of a photo.
 *
 * @param name as it is told
 * @param extent of the picture as it is seen, turned as the camera noted
 * @param known what the map has of it; empty for a file
 */
record NamedPicture(String name, Path file, Extent extent, Optional<Picture> known) {
  /** Photos of a folder that are looked at. */
  private static final int MOST = 50;

  /** The one picture of this name. */
  static NamedPicture one(MapFolder opened, String name) throws CommandFailure {
    List<NamedPicture> all = all(opened, name);
    if (all.size() > 1) {
      throw new CommandFailure(
          "\"%s\" is a folder of %d photos: name one of them".formatted(name, all.size()));
    }
    return all.get(0);
  }

  /**
   * The picture of this name, or the photos of a folder of this name. Files and folders are looked
   * for where the command runs, then beside the map's folder.
   *
   * @return at least one
   */
  static List<NamedPicture> all(MapFolder opened, String name) throws CommandFailure {
    Optional<Picture> known = ofTheMap(opened, name);
    if (known.isPresent()) {
      Picture picture = known.get();
      Extent extent = Extent.of(picture.width(), picture.height());
      return List.of(new NamedPicture(name, opened.fileOf(picture), extent, known));
    }
    Path file = Path.of(name);
    Path there =
        Files.exists(file) ? file : opened.path().toAbsolutePath().normalize().resolveSibling(file);
    if (Files.isDirectory(there)) {
      return photos(there, name);
    }
    if (!Files.isRegularFile(there)) {
      throw new CommandFailure(
          "\"%s\" is neither a picture of the map nor a file, nor a folder of photos"
              .formatted(name));
    }
    try {
      return List.of(ofFile(name, there));
    } catch (PictureException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    }
  }

  private static Optional<Picture> ofTheMap(MapFolder opened, String name) {
    try {
      return opened.map().picture(new PictureId(name));
    } catch (IllegalArgumentException noPictureName) {
      return Optional.empty(); // then it can only be a file
    }
  }

  private static NamedPicture ofFile(String name, Path file) throws PictureException {
    PhotoFile photo = PhotoFile.probe(file);
    Extent extent = Extent.of(photo.seenWidth(), photo.seenHeight());
    return new NamedPicture(name, file, extent, Optional.empty());
  }

  /** Empty for what is no photo: folders hold notes and other things too. */
  private static Optional<NamedPicture> photo(String name, Path file) {
    try {
      return Optional.of(ofFile(name, file));
    } catch (PictureException noPhoto) {
      return Optional.empty();
    }
  }

  private static List<NamedPicture> photos(Path folder, String name) throws CommandFailure {
    List<NamedPicture> photos;
    try (Stream<Path> files = Files.list(folder)) {
      photos =
          files
              .filter(Files::isRegularFile)
              .sorted()
              .flatMap(file -> photo(name + "/" + file.getFileName(), file).stream())
              .toList();
    } catch (IOException unreadable) {
      throw new CommandFailure("%s: can't be read: %s".formatted(folder, unreadable.getMessage()));
    }
    if (photos.isEmpty() || photos.size() > MOST) {
      throw new CommandFailure(
          photos.isEmpty()
              ? "there is no photo (JPEG, PNG or TIFF) in the folder " + folder
              : "there are %d photos in the folder %s; at most %d are looked at: name one"
                  .formatted(photos.size(), folder, MOST));
    }
    return photos;
  }

  /** As it is lined up by itself with another. */
  MatchImage matchable() throws CommandFailure {
    try {
      return known.isPresent()
          ? MatchImage.of(file, known.get(), Progress.UNWATCHED)
          : MatchImage.of(file, Progress.UNWATCHED);
    } catch (PictureException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    }
  }
}
