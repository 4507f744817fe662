package dev.jetting.examples.kitdesk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.json.KitValidationJson;
import dev.jetting.rules.kit.KitDepth;
import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The results, a JSON object a line: {@code line}, and either {@code validation} or {@code
 * problem}. A line counts once its end is written, so a program that was stopped can go on.
 */
final class ResultFile implements Closeable {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Writer out;

  private ResultFile(Writer out) {
    this.out = out;
  }

  /** A new file. */
  static ResultFile create(Path file) throws UnusableException, IOException {
    if (Files.exists(file)) {
      throw new UnusableException(
          "--out " + file + ": is there already: allowed a new file, or --resume to go on with it");
    }
    return new ResultFile(
        Files.newBufferedWriter(
            file, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
  }

  /** A file to go on with, cut after its last whole line. */
  static ResultFile resume(Path file, KitDepth depth, Consumer<Outcome> earlier)
      throws UnusableException, IOException {
    if (!Files.exists(file)) {
      return create(file);
    }
    truncateToWholeLines(file);
    try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      long number = 0;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        number++;
        Outcome outcome = read(file, number, line);
        if (outcome.validation().filter(v -> v.depth() != depth).isPresent()) {
          throw new UnusableException(
              "--out " + file + ": was made at another depth: allowed the same --depth");
        }
        earlier.accept(outcome);
      }
    }
    return new ResultFile(
        Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.APPEND));
  }

  private static void truncateToWholeLines(Path file) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
      java.nio.ByteBuffer one = java.nio.ByteBuffer.allocate(1);
      long end = channel.size();
      while (end > 0) {
        one.clear();
        channel.read(one, end - 1);
        if (one.get(0) == '\n') {
          break;
        }
        end--;
      }
      channel.truncate(end);
    }
  }

  private static Outcome read(Path file, long number, String line) throws UnusableException {
    try {
      JsonNode tree = MAPPER.readTree(line);
      JsonNode at = tree.path("line");
      JsonNode validation = tree.path("validation");
      JsonNode problem = tree.path("problem");
      if (at.isIntegralNumber() && validation.isObject()) {
        return new Outcome(
            at.longValue(),
            Optional.of(KitValidationJson.read(MAPPER.writeValueAsString(validation))),
            "");
      }
      if (at.isIntegralNumber() && problem.isTextual()) {
        return new Outcome(at.longValue(), Optional.empty(), problem.textValue());
      }
    } catch (JsonProcessingException | JsonInputException e) {
      throw new UnusableException(
          "--out " + file + ", line " + number + ": is no result: " + e.getMessage());
    }
    throw new UnusableException("--out " + file + ", line " + number + ": is no result");
  }

  /** A file that keeps nothing. */
  static ResultFile none() {
    return new ResultFile(Writer.nullWriter());
  }

  void write(Outcome outcome) throws IOException {
    out.write("{\"line\":" + outcome.line());
    if (outcome.validation().isPresent()) {
      out.write(",\"validation\":" + KitValidationJson.writeLine(outcome.validation().get()));
    } else {
      out.write(",\"problem\":" + MAPPER.writeValueAsString(outcome.problem()));
    }
    out.write("}\n");
  }

  void flush() throws IOException {
    out.flush();
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
