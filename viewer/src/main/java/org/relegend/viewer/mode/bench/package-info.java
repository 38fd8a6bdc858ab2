/**
 * The job over the map: readings, conditions, photos of the unit. Must not know windows, nor rooms
 * it doesn't work with.
 */
@NullMarked
package org.relegend.viewer.mode.bench;

import org.jspecify.annotations.NullMarked;
