package org.relegend.check;

import java.util.List;
import java.util.stream.Stream;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;

/** Line-ups of pictures that the map doesn't have. */
final class LineUpOfNothing implements Check {
  @Override
  public String code() {
    return "line-up-of-nothing";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().lineUps().stream()
        .flatMap(
            pairs ->
                Stream.of(pairs.a(), pairs.b())
                    .filter(picture -> !context.map().pictures().has(picture))
                    .map(picture -> finding(context, pairs, picture)))
        .toList();
  }

  private Finding finding(CheckContext context, PicturePairs pairs, PictureId gone) {
    return new Finding(
            code(),
            Severity.WARNING,
            List.of(),
            "%s and %s are lined up, but the map doesn't have picture %s"
                .formatted(context.caption(pairs.a()), context.caption(pairs.b()), gone),
            "Take the line-up away, or add the picture under that name.")
        .about(pairs.key().toString())
        .on(gone)
        .fixedBy(MapTables.LINE_UPS.remove(pairs.key()));
  }
}
