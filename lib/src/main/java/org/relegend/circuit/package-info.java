/**
 * The circuit of a board map: what the kinds of part are made of, which pins are joined, and what
 * can be reached from where. Must not know how maps are stored, measured on or shown.
 */
@NullMarked
package org.relegend.circuit;

import org.jspecify.annotations.NullMarked;
