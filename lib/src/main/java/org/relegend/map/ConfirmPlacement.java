package org.relegend.map;

/** Stands for a placement as it is. */
public record ConfirmPlacement(Placement.Key placement, Attestation evidence) implements Edit {
  @Override
  public String label(BoardMap map) {
    return "Confirm " + map.nameOf(placement.subject());
  }

  @Override
  public BoardMap applyTo(BoardMap map) throws EditRefusedException {
    Placement known =
        map.placements()
            .find(placement)
            .orElseThrow(() -> new EditRefusedException("Nothing is placed as " + placement + "."));
    return map.with(MapTables.PLACEMENTS, map.placements().with(known.confirmedBy(evidence)));
  }
}
