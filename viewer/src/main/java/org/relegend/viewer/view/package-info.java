/**
 * How a picture is looked at: scale, corner, orientation, as immutable values. Must not know
 * windows, painting, or what the picture shows.
 */
@NullMarked
package org.relegend.viewer.view;

import org.jspecify.annotations.NullMarked;
