/** Measuring on photos. Must not know windows, nor rooms it doesn't work with. */
@NullMarked
package org.relegend.viewer.mode.measure;

import org.jspecify.annotations.NullMarked;
