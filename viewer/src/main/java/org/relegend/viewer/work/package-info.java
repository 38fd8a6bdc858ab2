/**
 * Which thread owns what, and jobs that run off the event thread. Must not know pictures, documents
 * or widgets.
 */
@NullMarked
package org.relegend.viewer.work;

import org.jspecify.annotations.NullMarked;
