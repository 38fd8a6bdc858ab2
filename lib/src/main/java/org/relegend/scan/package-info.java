/**
 * Reads pictures from files: photos with their orientation, pages of a PDF, the text on a page.
 * Must not know windows, nor how maps are stored or what is placed on the pictures.
 */
@NullMarked
package org.relegend.scan;

import org.jspecify.annotations.NullMarked;
