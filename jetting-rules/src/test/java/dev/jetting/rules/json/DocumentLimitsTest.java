package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Documents made to hurt the reader. */
class DocumentLimitsTest {

  private static final String SHEET_LIMITS =
      ": allowed at most 1000000 characters, nested 32 deep, names of 200, texts of 10000 and"
          + " numbers of 100 characters";

  static Stream<String> oversized() {
    return Stream.of(
        " ".repeat(1_000_001),
        "[".repeat(900_000),
        "{\"a\":".repeat(100_000),
        "{\"a\":" + "[".repeat(32) + "]".repeat(32) + "}",
        "{\"" + "n".repeat(201) + "\": 1}",
        "{\"title\": \"" + "t".repeat(10_001) + "\"}",
        "{\"title\": " + "1".repeat(101) + "}",
        "{\"title\": 0." + "1".repeat(101) + "}",
        "{\"title\": 1e" + "1".repeat(101) + "}");
  }

  @ParameterizedTest
  @MethodSource("oversized")
  void read_ofAnOversizedDocument_saysWhatTheLimitsAre(String document) {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> SheetJson.read(document))
        .withMessageEndingWith(SHEET_LIMITS)
        .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(350));
  }

  /** However far the parser got: its buffers differ from run to run. */
  @ParameterizedTest
  @ValueSource(ints = {10_001, 50_000, 500_000})
  void read_ofAnOversizedText_saysWhereItBegins(int length) {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> SheetJson.read("{\"title\": \"" + "t".repeat(length) + "\"}"))
        .withMessageStartingWith("$.title: too large or too deep at line 1, column 11: allowed")
        .satisfies(e -> assertThat(e.column()).isEqualTo(11));
  }

  @Test
  void read_ofAnEndlessReader_stopsAtTheLimit() {
    Reader endless =
        new Reader() {
          @Override
          public int read(char[] buffer, int offset, int length) {
            buffer[offset] = ' ';
            return 1;
          }

          @Override
          public void close() {}
        };

    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> SheetJson.read(endless))
        .withMessageContaining("too large");
  }

  @Test
  void read_ofAnEndlessStream_stopsAtTheLimit() {
    InputStream endless =
        new InputStream() {
          @Override
          public int read() {
            return '[';
          }

          @Override
          public int read(byte[] buffer, int offset, int length) {
            Arrays.fill(buffer, offset, offset + length, (byte) '[');
            return length;
          }
        };

    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> ReportJson.read(endless))
        .withMessageContaining("too large");
  }

  @Test
  void read_ofAStreamThatFails_passesTheFailureOn() {
    InputStream failing =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("pulled out");
          }

          @Override
          public int read(byte[] buffer, int offset, int length) throws IOException {
            return read();
          }
        };

    assertThatExceptionOfType(IOException.class)
        .isThrownBy(() -> SheetJson.read(failing))
        .withMessage("pulled out");
  }

  @Test
  void read_ofManyFieldsWhoseNamesCollide_isRefusedForTheFirst() {
    // "Aa" and "BB" have one hash code, and so have all strings of as many of either.
    StringBuilder document = new StringBuilder("{\"format\": 1");
    for (int i = 0; i < 1 << 14; i++) {
      StringBuilder name = new StringBuilder();
      for (int bit = 0; bit < 14; bit++) {
        name.append((i >> bit & 1) == 0 ? "Aa" : "BB");
      }
      document.append(",\"").append(name).append("\":1");
    }

    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> SheetJson.read(document + "}"))
        .withMessage("$.format: 1: allowed \"jetting setup sheet\"");
  }
}
