package org.relegend.map;

import java.util.List;

/** Several edits made as one: all of them, or none. */
public record EditGroup(String title, List<Edit> steps) implements Edit {
  public EditGroup {
    TextRules.line("label", title);
    steps = List.copyOf(steps);
  }

  @Override
  public String label(BoardMap map) {
    return title;
  }

  @Override
  public BoardMap applyTo(BoardMap map) throws EditRefusedException {
    return EditBatches.apply(steps, map);
  }
}
