package dev.jetting.rules.search;

import java.io.Serial;

/**
 * A fault of the caller's own code that a {@link Run} called, not of the search. The cause is what
 * that code threw.
 */
public final class CallbackException extends RuntimeException {

  @Serial private static final long serialVersionUID = 1L;

  private final String callback;

  CallbackException(String callback, Exception cause) {
    super("the caller's " + callback + " threw " + cause.getClass().getName(), cause);
    this.callback = callback;
  }

  /**
   * {@return which component of the run threw: {@code cancelled}, {@code progress} or {@code
   * executor}}
   */
  public String callback() {
    return callback;
  }
}
