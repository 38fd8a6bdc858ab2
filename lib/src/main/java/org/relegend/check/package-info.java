/**
 * Checks of a map, one class each: what contradicts itself, what will mislead, what is still
 * unknown. Must not know how maps are stored or shown; files of pictures it knows by their digests.
 */
@NullMarked
package org.relegend.check;

import org.jspecify.annotations.NullMarked;
