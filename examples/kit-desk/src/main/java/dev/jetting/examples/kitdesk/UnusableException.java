package dev.jetting.examples.kitdesk;

import java.io.Serial;

/** Input that cannot be used at all; the message is one line for people. */
final class UnusableException extends Exception {

  @Serial private static final long serialVersionUID = 1L;

  UnusableException(String message) {
    super(message);
  }
}
