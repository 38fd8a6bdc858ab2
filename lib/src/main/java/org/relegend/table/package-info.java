/**
 * Tables and typed lines, as technicians write and export them, read into edits of a map. Must not
 * know how maps are stored or shown.
 */
@NullMarked
package org.relegend.table;

import org.jspecify.annotations.NullMarked;
