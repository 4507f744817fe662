/** Checks kits before they are sold, and searches catalogues for settings. */
package dev.jetting.examples.kitdesk;
