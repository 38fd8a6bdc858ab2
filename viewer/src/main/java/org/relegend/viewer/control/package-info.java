/**
 * What windows and rooms are made of: texts, actions with their keys, fields, lists, the bar of
 * questions, and how a mode shows itself. Must not know any one mode or window.
 */
@NullMarked
package org.relegend.viewer.control;

import org.jspecify.annotations.NullMarked;
