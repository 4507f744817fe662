/** The words of the interface, a file for each language, and who reads them. */
@NullMarked
package dev.jetting.examples.shopcounter.words;

import org.jspecify.annotations.NullMarked;
