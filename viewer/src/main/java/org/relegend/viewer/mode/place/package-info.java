/** Placing parts by name. Must not know windows, nor rooms it doesn't work with. */
@NullMarked
package org.relegend.viewer.mode.place;

import org.jspecify.annotations.NullMarked;
