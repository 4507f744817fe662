package dev.jetting.core.cycle;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The tables of CYCLE.md. Several tests write one each and compute for minutes before, so the text
 * is read when a table is ready, and one thread writes at a time.
 */
final class Document {

  private static final Path PATH = Path.of("CYCLE.md");

  private Document() {}

  static String between(String begin, String end) throws IOException {
    String text = Files.readString(PATH);
    return text.substring(text.indexOf(begin) + begin.length(), text.indexOf(end));
  }

  static synchronized void write(String begin, String table, String end) throws IOException {
    String text = Files.readString(PATH);
    Files.writeString(
        PATH,
        text.substring(0, text.indexOf(begin) + begin.length())
            + table
            + text.substring(text.indexOf(end)));
  }
}
