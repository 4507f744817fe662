package dev.jetting.core;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** MODEL.md against the code and the data that it speaks of. */
class ModelDocumentTest {

  private static final Path DOCUMENT = Path.of("MODEL.md");

  @Test
  void referenceTable_isTheOneThatTheModelIsCheckedWith() throws IOException {
    String document = Files.readString(DOCUMENT, UTF_8);
    try (InputStream csv = getClass().getResourceAsStream("mixture/reference.csv")) {
      List<String> lines = new String(csv.readAllBytes(), UTF_8).lines().skip(1).toList();
      assertThat(lines).hasSize(7);
      for (String line : lines) {
        String numbers = line.substring(0, line.indexOf(",\""));
        assertThat(document).contains("| " + numbers.replace(",", " | ") + " |");
      }
    }
  }

  @Test
  void classesNamedBeforeTheirPackage_exist() throws IOException {
    List<String> missing = new ArrayList<>();
    var named =
        Pattern.compile("`core\\.([a-z.]+)\\.([A-Z]\\w+)`").matcher(Files.readString(DOCUMENT));
    int found = 0;
    while (named.find()) {
      found++;
      Path source =
          Path.of(
              "src/main/java/dev/jetting/core",
              named.group(1).replace('.', '/'),
              named.group(2) + ".java");
      if (!Files.exists(source)) {
        missing.add(named.group());
      }
    }
    assertThat(found).isGreaterThan(15);
    assertThat(missing).isEmpty();
  }
}
