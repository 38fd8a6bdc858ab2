/**
 * One map, several people: merging, packing into one file, unpacking what others packed, and what
 * is kept private on the way. Knows documents and files, never screens.
 */
@NullMarked
package org.relegend.share;

import org.jspecify.annotations.NullMarked;
