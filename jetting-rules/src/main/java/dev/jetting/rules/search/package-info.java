/** Exact search over the settings that parts allow, and how many engines the parts can serve. */
package dev.jetting.rules.search;
