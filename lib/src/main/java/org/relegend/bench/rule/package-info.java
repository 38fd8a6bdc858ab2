/**
 * What the readings of a unit say, by rules of the trade: each gives findings that name parts. Must
 * not know how suspects are ranked, nor files or screens.
 */
@NullMarked
package org.relegend.bench.rule;

import org.jspecify.annotations.NullMarked;
