/**
 * Keeps documents on disk: their JSON, atomic writing, locks, and recovery after a crash. Must not
 * know what is computed from a document or how it is shown.
 */
@NullMarked
package org.relegend.store;

import org.jspecify.annotations.NullMarked;
