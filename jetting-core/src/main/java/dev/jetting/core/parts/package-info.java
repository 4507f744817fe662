/**
 * What is screwed into a carburettor, and the carburettor itself: geometry and flow coefficients.
 */
package dev.jetting.core.parts;
