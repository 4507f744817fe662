/** From one setting file to a report in a terminal. */
package dev.jetting.examples.quickstart;
