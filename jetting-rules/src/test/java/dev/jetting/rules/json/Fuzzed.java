package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What holds of a reader on any bytes: it reads a document that a second, careful reading finds
 * nothing wrong with, or refuses in one line that names a place.
 */
final class Fuzzed {

  /** A reader of documents from a stream. */
  interface DocumentReader<T> {
    T read(InputStream in) throws IOException;
  }

  /** As large as the largest document of any reader may be. */
  private static final DocumentLimits LARGEST = new DocumentLimits(16_000_000, 200);

  private Fuzzed() {}

  /**
   * What is written of what was read reads back to an equal value.
   *
   * @return what was read; empty where it was refused
   */
  static <T> Optional<T> read(byte[] json, DocumentReader<T> reader, Function<T, String> writer) {
    T value;
    try {
      value = read(reader, json);
    } catch (JsonInputException e) {
      assertThat(e.getMessage())
          .startsWith("$")
          .doesNotContainPattern("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]")
          .hasSizeLessThan(1000);
      assertThat(e.line()).isPositive();
      assertThat(e.column()).isPositive();
      return Optional.empty();
    }
    assertThatCode(() -> readWithCare(json)).doesNotThrowAnyException();
    assertThat(read(reader, bytes(writer.apply(value)))).isEqualTo(value);
    return Optional.of(value);
  }

  /** As a reader reads what is not as it should be: one JSON document, each field once. */
  private static void readWithCare(byte[] json) {
    String text = new String(json, StandardCharsets.UTF_8);
    boolean marked = text.startsWith("\ufeff");
    Document.of(marked ? text.substring(1) : text, Document.factory(LARGEST), LARGEST);
  }

  private static <T> T read(DocumentReader<T> reader, byte[] json) {
    try {
      return reader.read(new ByteArrayInputStream(json));
    } catch (IOException e) {
      throw new UncheckedIOException(e); // bytes in memory have no I/O to fail
    }
  }

  /** Documents to start from, and documents made to hurt. */
  static Stream<byte[]> seeds(String... names) {
    return seeds(Stream.of(names).map(Documents::read));
  }

  /** The examples of a kind, and documents made to hurt. */
  static Stream<byte[]> seeds(FuzzedKind kind) {
    return seeds(kind.examples());
  }

  private static Stream<byte[]> seeds(Stream<String> examples) {
    return Stream.concat(
            examples,
            Stream.of(
                "",
                "\ufeff{}",
                "[".repeat(100_000),
                "{\"a\":".repeat(100_000),
                "{\"format\":1,\"format\":2}",
                "{\"a\":" + "9".repeat(100_000) + "}",
                "{\"a\":1e" + "9".repeat(99) + "}",
                "{\"" + "n".repeat(100_000) + "\":1}",
                "{\"a\":\"" + "\\u0000".repeat(100_000),
                " ".repeat(1_000_001)))
        .map(Fuzzed::bytes);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
