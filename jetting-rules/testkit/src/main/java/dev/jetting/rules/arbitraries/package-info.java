/**
 * jqwik arbitraries of setup sheets, parts and part changes, for tests of rules. In an artifact of
 * its own, so that no embedding program gets a test library.
 */
package dev.jetting.rules.arbitraries;
