/**
 * Looking: what is there is chosen, marked and dragged; the board is turned over. Must not know
 * windows, nor rooms it doesn't work with.
 */
@NullMarked
package org.relegend.viewer.mode.look;

import org.jspecify.annotations.NullMarked;
