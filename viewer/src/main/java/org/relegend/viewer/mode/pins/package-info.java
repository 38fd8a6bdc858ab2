/** Placing all pins of a part. Must not know windows, nor rooms it doesn't work with. */
@NullMarked
package org.relegend.viewer.mode.pins;

import org.jspecify.annotations.NullMarked;
