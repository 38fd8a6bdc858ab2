package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Picture;

/** Pictures whose file is another than the one that things were placed on. */
final class PictureChanged implements Check {
  @Override
  public String code() {
    return "picture-changed";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().pictures().stream()
        .filter(
            picture ->
                context.digest(picture).filter(now -> !now.equals(picture.sha256())).isPresent())
        .map(this::finding)
        .toList();
  }

  private Finding finding(Picture picture) {
    return new Finding(
            code(),
            Severity.WARNING,
            List.of(),
            "The file of %s is not the one the map was made on: %s"
                .formatted(picture.caption(), picture.file()),
            "Put the first file back; or see whether the placements still fit, and add the new file"
                + " as a picture of its own.")
        .on(picture.id());
  }
}
