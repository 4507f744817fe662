/** A web program for a workshop or a parts counter, built on the published API alone. */
@NullMarked
package dev.jetting.examples.shopcounter;

import org.jspecify.annotations.NullMarked;
