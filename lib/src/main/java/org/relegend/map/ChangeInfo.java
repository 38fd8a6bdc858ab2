package org.relegend.map;

/** Changes what the map is of: title, maker, model, issue. */
public record ChangeInfo(MapInfo info) implements Edit {
  @Override
  public String label(BoardMap map) {
    return "Change the title page";
  }

  @Override
  public BoardMap applyTo(BoardMap map) {
    return map.withInfo(info);
  }
}
