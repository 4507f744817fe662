/** Argument checks of the module. Not exported. */
package dev.jetting.core.checks;
