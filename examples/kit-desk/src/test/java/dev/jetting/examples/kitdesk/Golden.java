package dev.jetting.examples.kitdesk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What the program printed when somebody last looked at it. */
final class Golden {

  private static final Path FOLDER =
      Project.DIRECTORY.resolve("src/test/resources/dev/jetting/examples/kitdesk/golden");

  private Golden() {}

  /** Of a page: no line is wider than 80 columns. */
  static void assertIs(String name, String actual) throws IOException {
    assertHolds(name, actual);
    assertThat(actual.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
  }

  static void assertHolds(String name, String actual) throws IOException {
    Path golden = FOLDER.resolve(name);
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(FOLDER);
      Files.writeString(golden, actual);
    }
    assertThat(actual).isEqualTo(Files.readString(golden));
  }
}
