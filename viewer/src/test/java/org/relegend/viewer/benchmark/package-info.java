/** Timings that compare the viewer with a named baseline in the same run; no tests. */
@NullMarked
package org.relegend.viewer.benchmark;

import org.jspecify.annotations.NullMarked;
