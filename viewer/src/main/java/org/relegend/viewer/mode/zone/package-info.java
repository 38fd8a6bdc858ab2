/** Outlining hazard zones. Must not know windows, nor rooms it doesn't work with. */
@NullMarked
package org.relegend.viewer.mode.zone;

import org.jspecify.annotations.NullMarked;
