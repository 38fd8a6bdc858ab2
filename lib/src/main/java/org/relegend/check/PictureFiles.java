package org.relegend.check;

import java.util.Optional;
import org.relegend.map.Picture;

/** The files of a map's pictures, as far as checks need them. */
@FunctionalInterface
public interface PictureFiles {
  /** The SHA-256 of a picture's file as it is now; nothing where no such file can be read. */
  Optional<String> sha256(Picture picture);

  /** For a map whose folder isn't at hand: every file is taken to be there, and unchanged. */
  static PictureFiles asRecorded() {
    return picture -> Optional.of(picture.sha256());
  }
}
