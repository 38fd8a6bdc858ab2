/**
 * Photographs a board as a telephone would: camera, lens, light, sensor, each of them a parameter.
 * Must not know nets or where files go.
 */
@NullMarked
package org.relegend.demo.photo;

import org.jspecify.annotations.NullMarked;
