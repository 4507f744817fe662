/** Kits checked in the background, with their progress. */
@NullMarked
package dev.jetting.examples.shopcounter.kit;

import org.jspecify.annotations.NullMarked;
