package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.NOON;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.share.TrustReport.Filter;

class TrustReportTest {
  private static final Attestation ADA = new Attestation(Evidence.GUESSED, "Ada", NOON);
  private static final Attestation BEN =
      new Attestation(Evidence.MEASURED, "Ben", NOON.plusSeconds(86_400));

  private static BoardMap map() {
    BoardMap map = BoardMapSamples.divider(); // four pins on nets, inferred by "test"
    return map.with(
        MapTables.PLACEMENTS,
        map.placements()
            .with(new Placement(TOP, Subject.parse("R1"), new Point(1, 1), ADA))
            .with(new Placement(TOP, Subject.parse("R2"), new Point(2, 2), ADA).confirmedBy(BEN)));
  }

  private static List<String> placed(Filter filter) {
    return TrustReport.placements(map(), filter).stream().map(p -> p.subject().toString()).toList();
  }

  @Test
  void filters_areByAuthorEvidenceAndDate_andTogether() {
    Optional<String> anyone = Optional.empty();
    Filter all = new Filter(anyone, Optional.empty(), Optional.empty());
    assertThat(placed(all)).containsExactly("R1", "R2");
    assertThat(placed(new Filter(Optional.of("Ben"), Optional.empty(), Optional.empty())))
        .containsExactly("R2");
    assertThat(placed(new Filter(anyone, Optional.of(Evidence.SEEN), Optional.empty())))
        .containsExactly("R2");
    assertThat(placed(new Filter(anyone, Optional.empty(), Optional.of(NOON.plusSeconds(1)))))
        .containsExactly("R2");
    assertThat(placed(new Filter(Optional.of("Ada"), Optional.of(Evidence.SEEN), Optional.empty())))
        .isEmpty();
    assertThat(TrustReport.nets(map(), all)).hasSize(3);
    assertThat(
            TrustReport.nets(
                map(), new Filter(Optional.of("Ben"), Optional.empty(), Optional.empty())))
        .isEmpty();
  }

  @Test
  void report_countsTheBestEvidence_andWhatMoreThanOneStandsFor() {
    TrustReport trust = TrustReport.of(map());
    assertThat(trust.authors())
        .extracting(TrustReport.Author::name)
        .containsExactly("Ada", "Ben", "test");
    assertThat(trust.best())
        .containsEntry(Evidence.MEASURED, 1)
        .containsEntry(Evidence.GUESSED, 1)
        .containsEntry(Evidence.INFERRED, 4);
    assertThat(trust.confirmed()).isEqualTo(1);
    assertThat(trust.lines()).hasSize(5).first().asString().startsWith("Ada").contains("2 guessed");
  }
}
