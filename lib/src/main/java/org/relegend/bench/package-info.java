/**
 * The bench job: what is true of one unit on the bench, its conditions, readings and hypotheses,
 * and the edits that turn one job into the next. Must not know how a job is kept on disk or shown.
 */
@NullMarked
package org.relegend.bench;

import org.jspecify.annotations.NullMarked;
