/**
 * What the technician is doing: the open map with its history, what is chosen, shown and walked,
 * and the states of placing, tracing and outlining. Must not know widgets, painting or files.
 */
@NullMarked
package org.relegend.viewer.session;

import org.jspecify.annotations.NullMarked;
