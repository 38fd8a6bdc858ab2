package org.relegend.share;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.Table;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PhotoPrivacy;
import org.relegend.scan.PictureException;
import org.relegend.scan.Progress;
import org.relegend.store.Digests;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/**
 * Tells a packed photo and the one it was made of for the same: packing takes the notes out of a
 * photo, so that its digest is another one, though every pixel is as it was.
 */
public final class SamePhotos {
  private SamePhotos() {}

  /**
   * Their map with my photos in the place of those that are the same without their notes.
   *
   * @throws StoreException where a photo of mine can't be read
   */
  public static BoardMap matched(MapFolder mine, BoardMap theirs) throws StoreException {
    Table<org.relegend.map.PictureId, Picture> pictures = theirs.pictures();
    for (Picture own : mine.map().pictures()) {
      Picture other = pictures.find(own.id()).orElse(own);
      if (own instanceof Photo
          && other instanceof Photo
          && !own.sha256().equals(other.sha256())
          && isSame(mine.fileOf(own), other.sha256())) {
        pictures = pictures.with(own);
      }
    }
    return theirs.with(MapTables.PICTURES, pictures);
  }

  private static boolean isSame(Path own, String bareDigest) throws StoreException {
    Path folder = null;
    try {
      folder = Files.createTempDirectory("relegend-");
      Path bare = folder.resolve("bare");
      PhotoPrivacy.strip(PhotoFile.probe(own), bare, Progress.UNWATCHED);
      return Digests.sha256(bare).equals(bareDigest);
    } catch (PictureException | IOException unfit) {
      return false; // then they count as two photos, which loses nothing
    } finally {
      if (folder != null) {
        deleteQuietly(folder);
      }
    }
  }

  private static void deleteQuietly(Path folder) {
    try {
      StagedFolder.delete(folder);
    } catch (IOException left) {
      folder.toFile().deleteOnExit();
    }
  }
}
