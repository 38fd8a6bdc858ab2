/**
 * What technicians type and tables bring, read into readings and conditions. Must not know files
 * beyond the bytes of a table, nor screens.
 */
@NullMarked
package org.relegend.bench.entry;

import org.jspecify.annotations.NullMarked;
