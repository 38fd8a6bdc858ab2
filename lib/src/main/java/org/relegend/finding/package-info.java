/** What checks of a map and rules of readings find: how much it matters, about what, what to do. */
@NullMarked
package org.relegend.finding;

import org.jspecify.annotations.NullMarked;
