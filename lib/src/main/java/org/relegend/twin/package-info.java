/**
 * Twins: from a few known pairs to the whole channel, where channels differ, and where a twin
 * should lie. Must not know how maps are stored or shown.
 */
@NullMarked
package org.relegend.twin;

import org.jspecify.annotations.NullMarked;
