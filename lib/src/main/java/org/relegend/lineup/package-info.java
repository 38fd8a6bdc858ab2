/**
 * Brings pictures of one board onto each other: transforms fitted to point pairs with their stated
 * error, package outlines and scale. Must not know how maps are stored or shown.
 */
@NullMarked
package org.relegend.lineup;

import org.jspecify.annotations.NullMarked;
