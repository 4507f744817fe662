/** How much the counter serves, measured over loopback by a client of its own. */
@NullMarked
package dev.jetting.examples.shopcounter.load;

import org.jspecify.annotations.NullMarked;
