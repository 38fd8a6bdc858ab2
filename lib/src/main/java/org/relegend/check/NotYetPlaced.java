package org.relegend.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardId;
import org.relegend.map.Part;
import org.relegend.map.Photo;
import org.relegend.map.Pin;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/** How far the parts and pins of each board are placed on photos and pages. */
final class NotYetPlaced implements Check {
  @Override
  public String code() {
    return "not-yet-placed";
  }

  /** One finding a board, with counts: a half-made map is the normal state. */
  @Override
  public List<Finding> inspect(CheckContext context) {
    Set<Subject> onPhotos = new HashSet<>();
    Set<Subject> onPages = new HashSet<>();
    for (Placement placement : context.map().placements()) {
      context
          .map()
          .picture(placement.picture())
          .map(picture -> picture instanceof Photo ? onPhotos : onPages)
          .ifPresent(placed -> placed.add(placement.subject()));
    }
    Map<BoardId, List<Part>> boards =
        context.map().parts().stream()
            .collect(Collectors.groupingBy(Part::board, TreeMap::new, Collectors.toList()));
    List<Finding> findings = new ArrayList<>();
    boards.forEach(
        (board, parts) -> {
          Tally tally = new Tally();
          parts.forEach(part -> tally.count(part, onPhotos, onPages));
          if (tally.isOpen()) {
            findings.add(finding(board, tally));
          }
        });
    return findings;
  }

  private Finding finding(BoardId board, Tally tally) {
    return new Finding(
            code(),
            Severity.INFORMATION,
            List.of(),
            "Board %s: %s of %s and %s of %s are placed on photos, %s on pages; on no picture: %s, %s"
                .formatted(
                    board,
                    CountText.number(tally.partsOnPhotos),
                    CountText.count(tally.parts, "part"),
                    CountText.number(tally.pinsOnPhotos),
                    CountText.count(tally.pins, "pin"),
                    CountText.count(tally.partsOnPages, "part"),
                    CountText.count(tally.partsNowhere, "part"),
                    CountText.count(tally.pinsNowhere, "pin")),
            "Place what you need next; the rest can wait.")
        .about(board.text());
  }

  /** Counts of one board. */
  private static final class Tally {
    private int parts;
    private int partsOnPhotos;
    private int partsOnPages;
    private int partsNowhere;
    private int pins;
    private int pinsOnPhotos;
    private int pinsNowhere;

    void count(Part part, Set<Subject> onPhotos, Set<Subject> onPages) {
      Subject subject = Subject.of(part.id());
      boolean photo = onPhotos.contains(subject);
      boolean page = onPages.contains(subject);
      parts++;
      partsOnPhotos += photo ? 1 : 0;
      partsOnPages += page ? 1 : 0;
      partsNowhere += photo || page ? 0 : 1;
      for (Pin pin : part.pins()) {
        Subject of = Subject.of(part.ref(pin));
        pins++;
        pinsOnPhotos += onPhotos.contains(of) ? 1 : 0;
        pinsNowhere += onPhotos.contains(of) || onPages.contains(of) ? 0 : 1;
      }
    }

    boolean isOpen() {
      return partsNowhere + pinsNowhere > 0;
    }
  }
}
