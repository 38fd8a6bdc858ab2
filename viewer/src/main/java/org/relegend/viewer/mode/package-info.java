/**
 * The list of all modes and rooms. Each stands in a package of its own below this one; must hold
 * nothing but the list.
 */
@NullMarked
package org.relegend.viewer.mode;

import org.jspecify.annotations.NullMarked;
