package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.MapTables;
import org.relegend.map.Picture;
import org.relegend.map.Placement;

/** Things that are placed beyond the edges of their picture, so that nobody can see them. */
final class PlacementOutsidePicture implements Check {
  @Override
  public String code() {
    return "placement-outside-picture";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Finding> findings = new ArrayList<>();
    for (Placement placement : context.map().placements()) {
      context
          .map()
          .picture(placement.picture())
          .filter(picture -> !picture.contains(placement.at()))
          .ifPresent(picture -> findings.add(finding(context, placement, picture)));
    }
    return findings;
  }

  private Finding finding(CheckContext context, Placement placement, Picture picture) {
    return new Finding(
            code(),
            Severity.ERROR,
            List.of(placement.subject()),
            "%s is placed at %s, %s of %s, which is %s x %s"
                .formatted(
                    context.map().nameOf(placement.subject()),
                    CountText.number(placement.at().x()),
                    CountText.number(placement.at().y()),
                    picture.caption(),
                    CountText.number(picture.width()),
                    CountText.number(picture.height())),
            "Place it again on this picture, or take the placement away.")
        .on(picture.id())
        .fixedBy(MapTables.PLACEMENTS.remove(placement.key()));
  }
}
