/**
 * Draws the demo instrument: its schematic pages, its board photos, the map over them, and where
 * all of it truly lies. One command draws the folder anew, always to the same bytes: {@code mvn -B
 * -q -pl demo-data -am -P draw-demo -DskipTests package}. Must not know the viewer.
 */
@NullMarked
package org.relegend.demo;

import org.jspecify.annotations.NullMarked;
