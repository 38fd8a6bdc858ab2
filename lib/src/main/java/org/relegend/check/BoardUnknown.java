package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Board;
import org.relegend.map.BoardId;
import org.relegend.map.MapTables;
import org.relegend.map.Part;
import org.relegend.map.Picture;
import org.relegend.map.Subject;

/** Parts and photos of boards that the map doesn't list. */
final class BoardUnknown implements Check {
  @Override
  public String code() {
    return "board-unknown";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    Map<BoardId, List<Subject>> parts = new TreeMap<>();
    Map<BoardId, Integer> photos = new TreeMap<>();
    for (Part part : context.map().parts()) {
      parts.computeIfAbsent(part.board(), b -> new ArrayList<>()).add(Subject.of(part.id()));
    }
    for (Picture picture : context.map().pictures()) {
      picture.shownBoard().ifPresent(board -> photos.merge(board, 1, Integer::sum));
    }
    photos.keySet().forEach(board -> parts.putIfAbsent(board, List.of()));
    List<Finding> findings = new ArrayList<>();
    parts.forEach(
        (board, on) -> {
          if (!context.map().boards().has(board)) {
            findings.add(finding(board, on, photos.getOrDefault(board, 0)));
          }
        });
    return findings;
  }

  private Finding finding(BoardId board, List<Subject> parts, int photos) {
    return new Finding(
            code(),
            Severity.WARNING,
            parts,
            "The map doesn't list board %s, but has %s and %s of it"
                .formatted(
                    board, CountText.count(parts.size(), "part"), CountText.count(photos, "photo")),
            "Add the board, or put the parts on the board they sit on.")
        .about(board.text())
        .fixedBy(MapTables.BOARDS.put(Board.named(board)));
  }
}
