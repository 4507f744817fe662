/** The equations of the mixture model, one small class each, in SI units. Not exported. */
package dev.jetting.core.flow;
