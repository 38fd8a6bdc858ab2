/**
 * Draws the schematic: one vector page and one page that looks like a poor scan, and keeps where
 * all of it lies. Must not know the board's photos.
 */
@NullMarked
package org.relegend.demo.page;

import org.jspecify.annotations.NullMarked;
