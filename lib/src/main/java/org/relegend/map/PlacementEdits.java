package org.relegend.map;

/** Edits of where things are seen. */
public final class PlacementEdits {
  private PlacementEdits() {}

  /** Places something on a picture, or moves it there. */
  public record Place(Placement placement) implements Edit {
    @Override
    public String label(BoardMap map) {
      String verb = map.placements().has(placement.key()) ? "Move " : "Place ";
      return verb + map.nameOf(placement.subject());
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      requireKnown(map, placement);
      return map.withPlacements(map.placements().with(placement));
    }

    static void requireKnown(BoardMap map, Placement placement) throws EditRefusedException {
      if (!map.pictures().has(placement.picture())) {
        throw new EditRefusedException(
            "The map has no picture " + placement.picture() + ": add it first.");
      }
      PartEdits.requireKnown(map, placement.subject());
    }
  }

  /** Takes a placement away. */
  public record Unplace(Placement.Key placement) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Take away " + map.nameOf(placement.subject());
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withPlacements(map.placements().without(placement));
    }
  }

  /** Stands for a placement as it is. */
  public record Confirm(Placement.Key placement, Attestation evidence) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Confirm " + map.nameOf(placement.subject());
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      Placement known =
          map.placements()
              .find(placement)
              .orElseThrow(
                  () -> new EditRefusedException("Nothing is placed as " + placement + "."));
      return map.withPlacements(map.placements().with(known.confirmedBy(evidence)));
    }
  }
}
