/**
 * The windows and what they are made of. Must not compute what the library could, and must not know
 * the command line.
 */
@NullMarked
package org.relegend.viewer.ui;

import org.jspecify.annotations.NullMarked;
