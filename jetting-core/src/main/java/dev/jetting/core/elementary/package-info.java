/**
 * The elementary carburettor of the textbooks: a fixed venturi, one fuel jet, one depression. For
 * checking the building blocks against published answers and for teaching. Not for slide
 * carburettors, whose openings, needle and pilot are in {@code dev.jetting.core.mixture}.
 */
package dev.jetting.core.elementary;
