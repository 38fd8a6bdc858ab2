/**
 * Printed sheets of maps and jobs, as PDF. Knows everything that is computed, and must not know how
 * anything is shown on a screen.
 */
@NullMarked
package org.relegend.sheet;

import org.jspecify.annotations.NullMarked;
