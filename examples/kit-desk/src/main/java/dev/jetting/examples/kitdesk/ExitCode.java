package dev.jetting.examples.kitdesk;

/** The exit codes of the program. */
final class ExitCode {

  static final int OK = 0;
  static final int FAILED = 1;
  static final int UNUSABLE = 2;
  static final int BAD_LINES = 3;

  private ExitCode() {}
}
