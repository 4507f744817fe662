/**
 * Catalogues of parts, kits sold for engines, and what is wrong with a kit before anyone buys it.
 */
package dev.jetting.rules.kit;
