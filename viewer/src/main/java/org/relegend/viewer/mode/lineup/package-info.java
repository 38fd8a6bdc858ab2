/** Lining two pictures up. Must not know windows, nor rooms it doesn't work with. */
@NullMarked
package org.relegend.viewer.mode.lineup;

import org.jspecify.annotations.NullMarked;
