/** What several people say of one map: who says what, and clashes. Must not know windows. */
@NullMarked
package org.relegend.viewer.mode.share;

import org.jspecify.annotations.NullMarked;
