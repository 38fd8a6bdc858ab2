package org.relegend.map;

import java.util.ArrayList;
import java.util.List;

/**
 * Applies runs of like edits in one pass: an import of 50,000 parts then copies the table of parts
 * once and not 50,000 times. The outcome is that of one edit after the other.
 */
final class Runs {
  private Runs() {}

  static BoardMap apply(List<Edit> steps, BoardMap map) throws EditRefusedException {
    BoardMap result = map;
    int from = 0;
    while (from < steps.size()) {
      int end = from + 1;
      while (end < steps.size() && steps.get(end).getClass() == steps.get(from).getClass()) {
        end++;
      }
      result = applyRun(steps.subList(from, end), result);
      from = end;
    }
    return result;
  }

  private static BoardMap applyRun(List<Edit> run, BoardMap map) throws EditRefusedException {
    Edit first = run.get(0);
    if (run.size() > 1 && first instanceof PartEdits.PutPart) {
      return putParts(run, map);
    }
    if (run.size() > 1 && first instanceof NetEdits.PutNet) {
      return map.withNets(
          map.nets().withAll(run.stream().map(edit -> ((NetEdits.PutNet) edit).net()).toList()));
    }
    if (run.size() > 1 && first instanceof PlacementEdits.Place) {
      return place(run, map);
    }
    BoardMap result = map;
    for (Edit edit : run) {
      result = edit.applyTo(result);
    }
    return result;
  }

  private static BoardMap putParts(List<Edit> run, BoardMap map) {
    List<Part> parts = run.stream().map(edit -> ((PartEdits.PutPart) edit).part()).toList();
    List<Board> boards =
        parts.stream()
            .map(Part::board)
            .distinct()
            .filter(board -> !map.boards().has(board))
            .map(Board::named)
            .toList();
    return map.withBoards(map.boards().withAll(boards)).withParts(map.parts().withAll(parts));
  }

  private static BoardMap place(List<Edit> run, BoardMap map) throws EditRefusedException {
    List<Placement> placements = new ArrayList<>(run.size());
    for (Edit edit : run) {
      Placement placement = ((PlacementEdits.Place) edit).placement();
      PlacementEdits.Place.requireKnown(map, placement);
      placements.add(placement);
    }
    return map.withPlacements(map.placements().withAll(placements));
  }
}
