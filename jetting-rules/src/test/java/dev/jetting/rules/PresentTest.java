package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No assertion stands where it may never be reached without a count that says so. */
class PresentTest {

  private static final String CALL = ".ifPresent(";

  @Test
  void assertionInsideAnIfPresent_isFound() {
    assertThat(hidden("x.ifPresent(y -> assertThat(y).isTrue());")).hasSize(1);
    assertThat(hidden("x\n.ifPresent(\ny -> { f(y); assertThat(y).isTrue(); });")).hasSize(1);
    assertThat(hidden("x.ifPresent(list::add); assertThat(list).isEmpty();")).isEmpty();
  }

  @Test
  void testsOfTheLibrary_haveNone() throws IOException {
    List<String> found = new ArrayList<>();
    for (String module : List.of("jetting-units", "jetting-core", "jetting-rules")) {
      try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "test", "java"))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          String code = Files.readString(file);
          // The seeds of the fuzzed rule files are rule files, which its reader has to take.
          if (!file.endsWith("PresentTest.java") && !file.endsWith("RuleFileFuzzTest.java")) {
            hidden(code).forEach(call -> found.add(file.getFileName() + ": " + call));
          }
        }
      }
    }
    assertThat(found).isEmpty();
  }

  /** The calls whose argument asserts something. */
  private static List<String> hidden(String code) {
    List<String> found = new ArrayList<>();
    for (int at = code.indexOf(CALL); at >= 0; at = code.indexOf(CALL, at + 1)) {
      int end = at + CALL.length();
      for (int open = 1; open > 0 && end < code.length(); end++) {
        open += code.charAt(end) == '(' ? 1 : code.charAt(end) == ')' ? -1 : 0;
      }
      String call = code.substring(at, end);
      if (call.contains("assertThat")) {
        found.add(call.lines().findFirst().orElseThrow());
      }
    }
    return found;
  }
}
