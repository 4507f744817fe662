package dev.jetting.rules.json;

import dev.jetting.units.OneLine;

/** Text from a document, made safe to show on one line. */
final class Quote {

  private static final int LONGEST = 60;
  private static final int LONGEST_MESSAGE = 100;
  private static final int LONGEST_LIST = 200;
  private static final String ALLOWED = ": allowed ";

  private Quote() {}

  /** Shortened, control characters and lone surrogates escaped. */
  static String plain(String text) {
    return OneLine.shown(text, LONGEST);
  }

  /** As long as a list of names or a value in a message may be. */
  static String listed(String text) {
    return OneLine.shown(text, LONGEST_LIST);
  }

  static String quoted(String text) {
    return '"' + plain(text) + '"';
  }

  /** What is wrong, in a message of the form that this library's checks use. */
  static String problem(String message) {
    int end = message.lastIndexOf(ALLOWED);
    return OneLine.shown(end < 0 ? message : message.substring(0, end), LONGEST_MESSAGE);
  }

  /** What is allowed, in a message of the form that this library's checks use; may be empty. */
  static String allowed(String message) {
    int end = message.lastIndexOf(ALLOWED);
    return end < 0
        ? ""
        : OneLine.shown(message.substring(end + ALLOWED.length()), 2 * LONGEST_MESSAGE);
  }
}
