/** Machines, sessions and logs in one database file. */
@NullMarked
package dev.jetting.examples.shopcounter.store;

import org.jspecify.annotations.NullMarked;
