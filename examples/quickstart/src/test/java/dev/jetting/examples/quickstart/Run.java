package dev.jetting.examples.quickstart;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** A run of the program in this process. */
record Run(int exitCode, String out, String err) {

  static Run with(String... args) {
    return with(InputStream.nullInputStream(), args);
  }

  static Run reading(String input, String... args) {
    return with(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), args);
  }

  static Run with(InputStream in, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exitCode = Quickstart.run(args, in, new PrintStream(out, true), new PrintStream(err, true));
    return new Run(
        exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
