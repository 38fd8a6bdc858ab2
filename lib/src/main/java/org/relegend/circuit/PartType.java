package org.relegend.circuit;

import java.util.List;

/**
 * A type of part as a text names it: "LM317T" is the LM317 in TO-220 only, "LM317" any.
 *
 * @param name the type's usual name
 * @param written the type as the text has it
 * @param kind the name of its kind
 * @param pinouts one for each package that the text leaves, and for each way in which makers number
 *     it
 */
public record PartType(String name, String written, String kind, List<Pinout> pinouts) {
  public PartType {
    pinouts = List.copyOf(pinouts);
  }
}
