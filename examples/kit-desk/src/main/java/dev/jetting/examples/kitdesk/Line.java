package dev.jetting.examples.kitdesk;

/**
 * A line of a file.
 *
 * @param number its number, from 1
 * @param text the line without its end; empty if it cannot be read
 * @param problem why it cannot be read; empty if it can
 * @param digest SHA-256 of its bytes, all of them, without its end
 */
record Line(long number, String text, String problem, String digest) {

  boolean readable() {
    return problem.isEmpty();
  }

  boolean isBlank() {
    return readable() && text.isBlank();
  }
}
