/**
 * Paints marks, zones and hints over a picture, in the frame of the picture as it was painted. Must
 * not know windows, nor where pictures come from.
 */
@NullMarked
package org.relegend.viewer.paint;

import org.jspecify.annotations.NullMarked;
