/**
 * Finds the copper for a single-sided board: tracks, and wire links where a crossing can't be
 * avoided. Must not know how copper looks.
 */
@NullMarked
package org.relegend.demo.route;

import org.jspecify.annotations.NullMarked;
