package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.lineup.Refusal;
import org.relegend.lineup.StoredLineUp;
import org.relegend.map.MapTables;
import org.relegend.map.PicturePairs;

/** Pairs of two pictures that give no line-up, so that nothing is carried over between them. */
final class LineUpRefused implements Check {
  @Override
  public String code() {
    return "line-up-refused";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.lineUps().results().stream()
        .filter(StoredLineUp.Refused.class::isInstance)
        .map(StoredLineUp.Refused.class::cast)
        .map(refused -> finding(context, refused))
        .toList();
  }

  private Finding finding(CheckContext context, StoredLineUp.Refused refused) {
    PicturePairs pairs = refused.pairs();
    boolean halfMade = refused.refusal().reason() == Refusal.Reason.TOO_FEW_PAIRS;
    return new Finding(
            code(),
            halfMade ? Severity.INFORMATION : Severity.WARNING,
            List.of(),
            "%s and %s can't be lined up: %s"
                .formatted(
                    context.caption(pairs.a()),
                    context.caption(pairs.b()),
                    refused.refusal().message()),
            "Mend the pairs, or take the line-up away.")
        .about(pairs.key().toString())
        .on(pairs.a())
        .fixedBy(MapTables.LINE_UPS.remove(pairs.key()));
  }
}
