/** Tracing nets pin by pin. Must not know windows, nor rooms it doesn't work with. */
@NullMarked
package org.relegend.viewer.mode.trace;

import org.jspecify.annotations.NullMarked;
