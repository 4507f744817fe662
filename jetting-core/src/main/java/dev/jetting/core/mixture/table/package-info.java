/**
 * A setup in the numbers of the equations, and the table of many settings that share a slide. Made
 * for the mixture model and the search of {@code dev.jetting.rules}; no other module sees it.
 */
package dev.jetting.core.mixture.table;
