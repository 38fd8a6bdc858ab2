/** Starts the program: the viewer, or one command. Everything else is wired together here. */
@NullMarked
package org.relegend.viewer.app;

import org.jspecify.annotations.NullMarked;
