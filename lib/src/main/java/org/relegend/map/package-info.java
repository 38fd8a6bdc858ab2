/**
 * The board map: what is true of every unit of one model and revision, as immutable values, and the
 * edits that turn one map into the next. Must not know how maps are stored, computed on or shown.
 */
@NullMarked
package org.relegend.map;

import org.jspecify.annotations.NullMarked;
