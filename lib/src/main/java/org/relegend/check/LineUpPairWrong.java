package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.lineup.Fit;
import org.relegend.lineup.PairError;
import org.relegend.lineup.StoredLineUp;
import org.relegend.map.MapTables;
import org.relegend.map.PicturePairs;

/** Clicked pairs that a line-up leaves out, since the others agree without them. */
final class LineUpPairWrong implements Check {
  @Override
  public String code() {
    return "line-up-pair-wrong";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.lineUps().results().stream()
        .filter(StoredLineUp.Lined.class::isInstance)
        .map(result -> ((StoredLineUp.Lined) result).kept())
        .flatMap(kept -> wrong(context, kept))
        .toList();
  }

  private Stream<Finding> wrong(CheckContext context, StoredLineUp kept) {
    Optional<Fit> fit = kept.fit();
    return fit.stream()
        .flatMap(fitted -> fitted.errors().stream())
        .filter(error -> !error.used())
        .map(error -> finding(context, kept.pairs(), error));
  }

  private Finding finding(CheckContext context, PicturePairs pairs, PairError error) {
    List<PicturePairs.Spot> rest = new ArrayList<>(pairs.spots());
    rest.remove(error.pair());
    PicturePairs without =
        new PicturePairs(pairs.a(), pairs.b(), pairs.origin(), rest, pairs.evidence());
    return new Finding(
            code(),
            Severity.WARNING,
            List.of(),
            String.format(
                Locale.ROOT,
                "Pair %d of the line-up of %s and %s is off by %.0f from where the others put it,"
                    + " and is left out",
                error.pair() + 1,
                context.caption(pairs.a()),
                context.caption(pairs.b()),
                error.residual()),
            "Click it again on the right spot, or take it away.")
        .about(pairs.key() + " " + (error.pair() + 1))
        .on(pairs.b())
        .fixedBy(MapTables.LINE_UPS.put(without));
  }
}
