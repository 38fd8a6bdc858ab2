package org.relegend.demo.photo;

import org.relegend.demo.ray.Vec;

/**
 * The light over the bench: one lamp or window near enough to fall off over the board, and what
 * comes from all round.
 *
 * @param lamp its middle in millimetres of the view
 * @param size its radius in millimetres; small ones cast hard shadows
 * @param power brightness of white paper facing it at 500 mm, 1 is the sensor's white
 * @param lampColour its red, green, blue
 * @param ambient brightness of white paper from all round
 * @param ambientColour its red, green, blue
 */
public record Lighting(
    Vec lamp, double size, double power, Vec lampColour, double ambient, Vec ambientColour) {
  static final double REFERENCE = 500;
}
