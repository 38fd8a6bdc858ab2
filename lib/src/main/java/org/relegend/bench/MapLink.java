package org.relegend.bench;

import org.relegend.map.NameRules;
import org.relegend.map.TextRules;

/**
 * The map a job lies over.
 *
 * @param id the map's own id
 * @param digest of the map as it was when the job last saw it: 64 hexadecimal digits
 * @param title of that map, for people
 * @param place where its folder was found last, relative to the job's where that can be; a hint
 */
public record MapLink(String id, String digest, String title, String place) {
  public MapLink {
    NameRules.checkedToken("map id", id);
    if (!digest.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException("a digest has 64 hexadecimal digits");
    }
    TextRules.line("map title", title);
    TextRules.note(place);
  }
}
