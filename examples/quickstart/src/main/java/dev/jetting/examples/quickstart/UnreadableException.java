package dev.jetting.examples.quickstart;

import java.io.Serial;

/** Input that cannot be used; the message is one line for people. */
final class UnreadableException extends Exception {

  @Serial private static final long serialVersionUID = 1L;

  UnreadableException(String message) {
    super(message);
  }
}
