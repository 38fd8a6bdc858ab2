/** Draws the demo instrument: its schematic pages, its board photos and the map over them. */
@NullMarked
package org.relegend.demo;

import org.jspecify.annotations.NullMarked;
