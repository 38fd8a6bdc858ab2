package org.relegend.check;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.lineup.LineUps;
import org.relegend.map.PictureId;

/** Line-ups that lead round to where they began, and miss it by far more than their own error. */
final class LineUpRing implements Check {
  @Override
  public String code() {
    return "line-up-ring";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.lineUps().disagreeing().stream().map(ring -> finding(context, ring)).toList();
  }

  private Finding finding(CheckContext context, LineUps.Ring ring) {
    String way = ring.pictures().stream().map(context::caption).collect(Collectors.joining(", "));
    return new Finding(
            code(),
            Severity.WARNING,
            List.of(),
            String.format(
                Locale.ROOT,
                "The line-ups of %s disagree: once round, a point of %s is off by %.0f, where their"
                    + " errors allow %.0f",
                way,
                context.caption(ring.pictures().get(0)),
                ring.off(),
                ring.allowed()),
            "One of these line-ups is wrong, and nothing is carried over them. Look at their pairs,"
                + " or take one away.")
        .about(
            ring.pictures().stream().map(PictureId::text).sorted().collect(Collectors.joining(" ")))
        .on(ring.pictures().get(0));
  }
}
