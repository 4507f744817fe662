/** What comes of following the library's advice, counted on drawn settings. */
@NullMarked
package dev.jetting.examples.advicecount;

import org.jspecify.annotations.NullMarked;
