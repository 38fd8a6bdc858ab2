package org.relegend.check;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardId;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/** Parts of which no pin is known, so that no net can join them. */
final class PartWithoutPins implements Check {
  @Override
  public String code() {
    return "part-without-pins";
  }

  /**
   * One finding a board, since names are often taken from a page long before anything is traced.
   */
  @Override
  public List<Finding> inspect(CheckContext context) {
    Map<BoardId, List<Subject>> bare =
        context.map().parts().stream()
            .filter(part -> part.pins().isEmpty())
            .collect(
                Collectors.groupingBy(
                    Part::board,
                    TreeMap::new,
                    Collectors.mapping(part -> Subject.of(part.id()), Collectors.toList())));
    return bare.entrySet().stream()
        .map(board -> finding(context, board.getKey(), board.getValue()))
        .toList();
  }

  private Finding finding(CheckContext context, BoardId board, List<Subject> parts) {
    return new Finding(
            code(),
            Severity.INFORMATION,
            parts,
            "Board %s: no pin is known of %s: %s"
                .formatted(board, CountText.count(parts.size(), "part"), context.names(parts)),
            "Say what kind of part it is, or join one of its pins to a net.")
        .about(board.text());
  }
}
