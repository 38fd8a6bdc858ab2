/**
 * The demo instrument as tables tell it: parts, pins, nets, places on the board in millimetres.
 * Must not know how anything is drawn.
 */
@NullMarked
package org.relegend.demo.design;

import org.jspecify.annotations.NullMarked;
