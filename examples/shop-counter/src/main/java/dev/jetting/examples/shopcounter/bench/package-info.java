/** What is worked out about a machine, ready for a page: no HTTP, no database. */
@NullMarked
package dev.jetting.examples.shopcounter.bench;

import org.jspecify.annotations.NullMarked;
