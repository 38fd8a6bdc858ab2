package org.relegend.map;

/**
 * A repeated circuit.
 *
 * @param name as the board has it: "A"
 * @param panel what the front panel calls it: "Left"; empty while unknown
 */
public record Channel(String name, String panel, String note) implements Keyed<String> {
  public Channel {
    Names.checked("channel name", name);
    Texts.line("panel name", panel);
    Texts.note(note);
  }

  @Override
  public String key() {
    return name;
  }
}
