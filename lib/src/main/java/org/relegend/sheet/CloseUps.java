package org.relegend.sheet;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.relegend.bench.JobPhoto;
import org.relegend.bench.OwnPhotos;
import org.relegend.map.PartId;
import org.relegend.map.Picture;

/** Close-ups of this very unit, each with the names of the parts it shows. */
record CloseUps(JobFacts facts, CutOuts cutOuts) {
  /** Those that show any of the parts, under a heading; nothing where there are none. */
  void draw(PageFlow flow, String heading, Collection<PartId> parts) {
    List<Picture> pictures =
        facts.job().photos().stream()
            .filter(own -> own.shows().stream().anyMatch(parts::contains))
            .map(this::titled)
            .toList();
    if (!pictures.isEmpty()) {
      flow.heading(heading, 12);
      cutOuts.whole(flow, pictures);
      flow.down(4);
    }
  }

  private Picture titled(JobPhoto own) {
    String names = own.shows().stream().map(facts.map()::nameOf).collect(Collectors.joining(", "));
    return own.photo()
        .withId(OwnPhotos.idOver(facts.map(), own.key()))
        .withTitle(names + ": " + own.photo().caption());
  }
}
