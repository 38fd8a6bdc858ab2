package org.relegend.circuit;

import org.relegend.map.PinRef;

/**
 * One part that an extended node passed through, or two connectors plugged together.
 *
 * @param in the pin on the near side
 * @param out the pin on the far side; of the other connector where the passage is one
 */
public record Pass(PinRef in, PinRef out, Passage passage) {}
