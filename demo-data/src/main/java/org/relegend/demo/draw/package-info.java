/**
 * Drawing tools that give the same bytes on every machine: coverage masks, a stroke font, noise.
 * Must not know what is drawn with them.
 */
@NullMarked
package org.relegend.demo.draw;

import org.jspecify.annotations.NullMarked;
