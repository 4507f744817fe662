/** The standard rulebook: what a careful tuner looks at before anyone rides. */
package dev.jetting.rules.standard;
