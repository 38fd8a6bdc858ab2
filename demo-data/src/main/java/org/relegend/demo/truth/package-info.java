/**
 * Where everything truly lies on the demo's pictures, since the code that drew them knows. Must not
 * know files or maps.
 */
@NullMarked
package org.relegend.demo.truth;

import org.jspecify.annotations.NullMarked;
