/**
 * Drawing a photo anew with the board square on. Must not know windows, nor rooms it doesn't work
 * with.
 */
@NullMarked
package org.relegend.viewer.mode.straighten;

import org.jspecify.annotations.NullMarked;
