/**
 * Where a map's circuit can hurt: what mains and high voltage reach, what isolates, where stored
 * charge is, which of it nobody outlined. Must not know how maps are stored or shown, and must
 * never conclude that there is no danger.
 */
@NullMarked
package org.relegend.hazard;

import org.jspecify.annotations.NullMarked;
