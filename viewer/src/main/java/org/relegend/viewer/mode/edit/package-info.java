/**
 * Changing and removing what the map says of parts, nets and places. Must not know windows, nor
 * rooms it doesn't work with.
 */
@NullMarked
package org.relegend.viewer.mode.edit;

import org.jspecify.annotations.NullMarked;
