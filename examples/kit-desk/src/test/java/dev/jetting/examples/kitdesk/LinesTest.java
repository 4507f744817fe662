package dev.jetting.examples.kitdesk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bytes taken for lines. */
class LinesTest {

  @ParameterizedTest
  @ValueSource(strings = {"a\n\nb", "a\r\n\r\nb\r\n", "a\r\rb\r", "\ufeffa\n\r\nb\n"})
  void lines_endAnyWay(String text) throws IOException {
    List<Line> lines = lines(text);

    assertThat(lines).extracting(Line::text).containsExactly("a", "", "b");
    assertThat(lines).extracting(Line::number).containsExactly(1L, 2L, 3L);
    assertThat(lines.get(0).digest())
        .isEqualTo("ca978112ca1bbdcafac231b39a23dc4da786eff8147c4e72b9807785afee48bb");
  }

  @Test
  void emptyFile_hasNone() throws IOException {
    assertThat(lines("")).isEmpty();
    assertThat(lines("\ufeff")).isEmpty();
  }

  /** Also where a buffer ends between the two characters of a line's end, or within a letter. */
  @ParameterizedTest
  @ValueSource(ints = {65_530, 65_534, 65_535, 65_536, 65_537, 131_073})
  void longLine_isWhole(int length) throws IOException {
    String line = "x".repeat(length) + "é";

    assertThat(lines(line + "\r\n" + line)).extracting(Line::text).containsExactly(line, line);
  }

  @Test
  void lineOfMoreThanIsAllowed_isNotRead() throws IOException {
    String most = "x".repeat(Lines.MOST_BYTES);

    List<Line> lines = lines(most + "\n" + most + "x\n" + most + "y\nz");

    assertThat(lines.get(0).text()).isEqualTo(most);
    assertThat(lines.get(1).readable()).isFalse();
    assertThat(lines.get(1).problem()).isEqualTo("3000001 bytes: allowed at most 3000000");
    assertThat(lines.get(1).digest()).isNotEqualTo(lines.get(2).digest());
    assertThat(lines.get(3).text()).isEqualTo("z");
  }

  private static List<Line> lines(String text) throws IOException {
    List<Line> all = new ArrayList<>();
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    try (Lines lines = Lines.of(new ByteArrayInputStream(bytes))) {
      for (Optional<Line> line = lines.next(); line.isPresent(); line = lines.next()) {
        all.add(line.get());
      }
    }
    return all;
  }
}
