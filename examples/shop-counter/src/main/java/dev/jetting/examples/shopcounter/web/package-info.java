/** Pages, HTTP API, limits and errors. */
@NullMarked
package dev.jetting.examples.shopcounter.web;

import org.jspecify.annotations.NullMarked;
