package org.relegend.map;

/**
 * Edits of what is undecided. A decision is a group: what was chosen is put into the map, and the
 * clash is removed.
 */
public final class ClashEdits {
  private ClashEdits() {}

  /** Keeps two versions until somebody decides. */
  public record PutClash(Clash clash) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Keep both versions of " + Names.printable(clash.about());
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withClashes(map.clashes().with(clash));
    }
  }

  /** Says that this is decided. */
  public record RemoveClash(Clash.Key clash) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Drop the clash about " + Names.printable(clash.about());
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withClashes(map.clashes().without(clash));
    }
  }
}
