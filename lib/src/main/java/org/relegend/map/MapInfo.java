package org.relegend.map;

/**
 * What the map is of.
 *
 * @param issue the revision of the instrument that the map is true of; empty while unknown
 */
public record MapInfo(String title, String maker, String model, String issue, String note) {
  public MapInfo {
    NameRules.checked("title", title);
    TextRules.line("maker", maker);
    TextRules.line("model", model);
    TextRules.line("issue", issue);
    TextRules.note(note);
  }

  public static MapInfo titled(String title) {
    return new MapInfo(title, "", "", "", "");
  }
}
