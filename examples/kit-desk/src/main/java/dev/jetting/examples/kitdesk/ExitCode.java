package dev.jetting.examples.kitdesk;

/** What the program tells the one that started it. */
final class ExitCode {

  static final int OK = 0;
  static final int FAILED = 1;
  static final int UNUSABLE = 2;
  static final int BAD_LINES = 3;

  private ExitCode() {}
}
