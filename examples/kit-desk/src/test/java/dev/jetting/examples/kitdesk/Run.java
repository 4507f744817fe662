package dev.jetting.examples.kitdesk;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** A run of the program in this process. */
record Run(int exitCode, String out, String err) {

  static Run with(String... args) {
    return reading("", args);
  }

  static Run reading(String input, String... args) {
    return on(false, input, args);
  }

  static Run onATerminal(String... args) {
    return on(true, "", args);
  }

  private static Run on(boolean terminal, String input, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exitCode =
        KitDesk.run(
            args,
            new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
            new PrintStream(out, true),
            new PrintStream(err, true),
            terminal);
    return new Run(
        exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
