package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Documents that stand beside the tests. A run with {@code -Dgolden.update=true} writes the golden
 * ones anew; tests that read them see that in the next run.
 */
final class Documents {

  static final boolean UPDATE = Boolean.getBoolean("golden.update");
  private static final String FOLDER = "src/test/resources/dev/jetting/rules/json/";

  private static final String PUBLISHED = "src/main/resources/dev/jetting/rules/json/";

  private Documents() {}

  static String read(String name) {
    try (InputStream in = Documents.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The document with a piece of it replaced, which must be in it. */
  static String edited(String name, String piece, String replacement) {
    String document = read(name);
    int at = document.indexOf(piece);
    assertThat(at).as("place of %s", piece).isNotNegative();
    return document.substring(0, at) + replacement + document.substring(at + piece.length());
  }

  static void assertIsGolden(String name, String actual) {
    assertIsGolden(FOLDER, name, actual);
  }

  /** A golden document that is part of the library. */
  static void assertIsPublished(String name, String actual) {
    assertIsGolden(PUBLISHED, name, actual);
  }

  private static void assertIsGolden(String folder, String name, String actual) {
    if (UPDATE) {
      try {
        Files.createDirectories(Path.of(folder));
        Files.writeString(Path.of(folder + name), actual);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    } else {
      assertThat(actual).isEqualTo(read(name));
    }
  }
}
