package org.relegend.map;

/**
 * A repeated circuit.
 *
 * @param name as the board has it: "A"
 * @param panel what the front panel calls it: "Left"; empty while unknown
 */
public record Channel(String name, String panel, String note) implements Keyed<String> {
  public Channel {
    NameRules.checked("channel name", name);
    TextRules.line("panel name", panel);
    TextRules.note(note);
  }

  @Override
  public String key() {
    return name;
  }
}
