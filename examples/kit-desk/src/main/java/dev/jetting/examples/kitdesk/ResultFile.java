package dev.jetting.examples.kitdesk;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.rules.json.KitValidationJson;
import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The results, a JSON object a line under a {@link ResultHead}: {@code line}, either {@code
 * validation} or {@code problem}, and {@code input}. A line counts once its end is written, so a
 * program that was stopped can go on.
 */
final class ResultFile implements Closeable {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final String name;
  private final Writer out;

  private ResultFile(String name, Writer out) {
    this.name = name;
    this.out = out;
  }

  /** A new file. */
  static ResultFile create(Path file, ResultHead head) throws UnusableException {
    try {
      return begun(
          file,
          head,
          FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
    } catch (FileAlreadyExistsException e) {
      throw new UnusableException(
          "--out " + file + ": is there already: allowed a new file, or --resume to go on with it");
    } catch (IOException e) {
      throw UnusableException.of("--out " + file, "written", e);
    }
  }

  /** A file that has no more than these results and, it may be, the beginning of another. */
  static ResultFile after(EarlierResults earlier, Path file, ResultHead head)
      throws UnusableException {
    try {
      FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
      channel.truncate(earlier.end()).position(earlier.end());
      return earlier.end() == 0 ? begun(file, head, channel) : of(file, channel);
    } catch (IOException e) {
      throw UnusableException.of("--out " + file, "written", e);
    }
  }

  private static ResultFile begun(Path file, ResultHead head, FileChannel channel)
      throws UnusableException, IOException {
    ResultFile results = of(file, channel);
    results.out.write(head.line());
    results.flush();
    return results;
  }

  private static ResultFile of(Path file, FileChannel channel) {
    OutputStream bytes = Channels.newOutputStream(channel);
    // This writer puts a question mark in the place of half a character, which JSON may escape.
    Writer out = new BufferedWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8));
    return new ResultFile("--out " + file, out);
  }

  /** A file that keeps nothing. */
  static ResultFile none() {
    return new ResultFile("", Writer.nullWriter());
  }

  void write(Outcome outcome) throws UnusableException {
    try {
      out.write("{\"line\":" + outcome.line());
      if (outcome.validation().isPresent()) {
        out.write(",\"validation\":" + KitValidationJson.writeLine(outcome.validation().get()));
      } else {
        out.write(",\"problem\":" + MAPPER.writeValueAsString(outcome.problem()));
      }
      out.write(",\"input\":\"" + outcome.input() + "\"}\n");
    } catch (IOException e) {
      throw UnusableException.of(name, "written", e);
    }
  }

  void flush() throws UnusableException {
    try {
      out.flush();
    } catch (IOException e) {
      throw UnusableException.of(name, "written", e);
    }
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
