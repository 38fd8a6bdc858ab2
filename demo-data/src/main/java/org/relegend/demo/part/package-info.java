/**
 * What each part of the board looks like: one class a part family, each building solids. Must not
 * know cameras, light or nets.
 */
@NullMarked
package org.relegend.demo.part;

import org.jspecify.annotations.NullMarked;
