package dev.jetting.rules.json;

import dev.jetting.units.OneLine;

/** Text from a document, made safe to show on one line. */
final class Quote {

  private static final int LONGEST = 60;
  private static final int LONGEST_MESSAGE = 100;
  private static final int LONGEST_LIST = 200;

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

  /** What a parser says of a syntax error. */
  static String detail(String message) {
    return OneLine.shown(message, LONGEST_MESSAGE);
  }
}
