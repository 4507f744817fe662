package dev.jetting.examples.kitdesk;

import java.io.IOException;
import java.io.Serial;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Input that cannot be used at all; the message is one line for people. */
final class UnusableException extends Exception {

  @Serial private static final long serialVersionUID = 1L;

  UnusableException(String message) {
    super(message);
  }

  /** What a file system says of a file, in words. */
  static UnusableException of(String file, String done, IOException e) {
    if (e instanceof NoSuchFileException) {
      return new UnusableException(file + ": no such file or directory");
    }
    if (e instanceof AccessDeniedException) {
      return new UnusableException(file + ": may not be " + done);
    }
    String reason = e instanceof FileSystemException its ? its.getReason() : e.getMessage();
    return new UnusableException(
        file + ": cannot be " + done + (reason == null ? "" : ": " + reason));
  }
}
