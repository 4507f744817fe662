package dev.jetting.examples.advicecount;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.sessions.JqwikSession;

/**
 * Counts what comes of following the advice and writes the document of it.
 *
 * <p>From the root of the project: {@code mvn -q -Padvice-count -pl examples/advice-count -am
 * process-classes -Dargs="200 examples/advice-count/COUNTS.md"}.
 */
public final class AdviceCount {

  private static final int SETTINGS = 200;

  private AdviceCount() {}

  /**
   * Counts.
   *
   * @param args how many settings, 200 if none is given; then the file to write, or none to print
   * @throws IOException if the file cannot be written
   */
  public static void main(String[] args) throws IOException {
    int settings = args.length > 0 ? Integer.parseInt(args[0]) : SETTINGS;
    String document = count(settings).document();
    if (args.length > 1) {
      Files.writeString(Path.of(args[1]), document);
    } else {
      new PrintStream(System.out, true, StandardCharsets.UTF_8).print(document);
    }
  }

  /** Arbitraries draw in a session only. */
  static Counts count(int settings) {
    Counts[] counts = new Counts[1];
    JqwikSession.run(() -> counts[0] = Counts.of(settings));
    return counts[0];
  }
}
