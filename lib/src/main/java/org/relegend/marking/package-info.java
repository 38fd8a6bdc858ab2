/**
 * What is written on parts and beside them: values, tolerances, colour bands, preferred series,
 * date codes and typed readings, each answered with every reading it allows. Must not know which
 * part, map, file or screen a text comes from.
 */
@NullMarked
package org.relegend.marking;

import org.jspecify.annotations.NullMarked;
