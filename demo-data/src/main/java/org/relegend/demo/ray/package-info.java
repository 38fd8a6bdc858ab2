/**
 * Solid bodies, and which of them a line of sight or of light meets first. Lengths in millimetres;
 * x to the right, y down, z towards the viewer, the board's upper face at z = 0. Must not know what
 * the bodies stand for.
 */
@NullMarked
package org.relegend.demo.ray;

import org.jspecify.annotations.NullMarked;
