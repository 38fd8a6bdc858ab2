/**
 * Where the fault most likely is and what to read next: the signal path, the bracket between good
 * and bad readings, and parts ranked by a stated model. Must not know files or screens.
 */
@NullMarked
package org.relegend.bench.suspect;

import org.jspecify.annotations.NullMarked;
