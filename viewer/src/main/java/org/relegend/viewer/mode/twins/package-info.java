/**
 * Twins: said, followed, compared, and where unplaced ones should lie. Must not know windows, nor
 * rooms it doesn't work with.
 */
@NullMarked
package org.relegend.viewer.mode.twins;

import org.jspecify.annotations.NullMarked;
