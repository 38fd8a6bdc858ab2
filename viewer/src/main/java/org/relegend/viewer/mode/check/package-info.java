/**
 * What the checks found, and putting it right. Must not know windows, nor rooms it doesn't work
 * with.
 */
@NullMarked
package org.relegend.viewer.mode.check;

import org.jspecify.annotations.NullMarked;
