package org.relegend.map;

/**
 * What the map is of.
 *
 * @param issue the revision of the instrument that the map is true of; empty while unknown
 */
public record MapInfo(String title, String maker, String model, String issue, String note) {
  public MapInfo {
    Names.checked("title", title);
    Texts.line("maker", maker);
    Texts.line("model", model);
    Texts.line("issue", issue);
    Texts.note(note);
  }

  public static MapInfo titled(String title) {
    return new MapInfo(title, "", "", "", "");
  }
}
