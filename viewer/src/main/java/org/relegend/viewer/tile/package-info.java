/**
 * Pieces of pictures at several resolutions, fetched in the background and kept within a bound.
 * Must not know windows, nor what is marked on the pictures.
 */
@NullMarked
package org.relegend.viewer.tile;

import org.jspecify.annotations.NullMarked;
