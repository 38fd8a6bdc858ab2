package org.relegend.marking;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.OptionalInt;

/**
 * One way to read the bands of a resistor.
 *
 * @param value resistance, tolerance and why it was read so
 * @param coefficient the temperature coefficient in parts per million per kelvin, where a sixth
 *     band tells one
 * @param bands in the order they were read
 * @param reversed whether that is from the last band given to the first
 */
public record BandReading(
    ValueReading value, OptionalInt coefficient, List<BandColour> bands, boolean reversed) {
  public BandReading {
    requireNonNull(value);
    requireNonNull(coefficient);
    bands = List.copyOf(bands);
  }
}
