/** The mixture model itself: operating points, sweeps, maps, shares and step effects. */
package dev.jetting.core.mixture;
