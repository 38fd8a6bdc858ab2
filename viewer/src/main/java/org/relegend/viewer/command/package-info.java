/**
 * The command line: one class a command, each a thin call into the library. Must not know the
 * viewer's windows, nor compute anything the library could.
 */
@NullMarked
package org.relegend.viewer.command;

import org.jspecify.annotations.NullMarked;
