package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Page;
import org.relegend.map.Picture;

/** Pictures whose file is not where the map says. */
final class PictureMissing implements Check {
  @Override
  public String code() {
    return "picture-missing";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().pictures().stream()
        .filter(picture -> context.digest(picture).isEmpty())
        .map(this::finding)
        .toList();
  }

  private Finding finding(Picture picture) {
    return picture instanceof Page ? leftOut(picture) : lost(picture);
  }

  /** Packs go without their pages, so that this is how a map comes from somebody else. */
  private Finding leftOut(Picture picture) {
    return new Finding(
            code(),
            Severity.INFORMATION,
            List.of(),
            "The page %s has no file here: %s".formatted(picture.caption(), picture.file()),
            "If a pack left it out, add your own scan and line the two up; else put the file back."
                + " What was placed on it is kept.")
        .on(picture.id());
  }

  private Finding lost(Picture picture) {
    return new Finding(
            code(),
            Severity.ERROR,
            List.of(),
            "The file of %s can't be read: %s".formatted(picture.caption(), picture.file()),
            "Put the file back in its place in the map's folder; what was placed on it is kept.")
        .on(picture.id());
  }
}
