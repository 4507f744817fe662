package dev.jetting.rules.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import dev.jetting.rules.text.EachLanguage;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.provider.CsvSource;

/** What the readers refuse in the tests of bad documents, on one page in all languages. */
class RefusalPageTest {

  private static final Path GOLDEN =
      Path.of("src/test/resources/dev/jetting/rules/text/errors.txt");

  @Test
  void everyRefusal_isOnThePage() throws IOException {
    Set<String> page = new TreeSet<>();
    add(page, BadSheetTest.class, BadSheetTest::refused);
    add(page, BadRuleFileTest.class, BadRuleFileTest::refusal);
    assertThat(page).hasSizeGreaterThan(100);
    String text = String.join("\n", page) + "\n";
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(GOLDEN, text, UTF_8);
    }
    assertThat(text).isEqualTo(Files.readString(GOLDEN, UTF_8));
  }

  /** The rows of a piece, what spoils it, and the line of the error. */
  private static void add(
      Set<String> page, Class<?> tests, BiFunction<String, String, JsonInputException> refusal) {
    for (Method method : tests.getDeclaredMethods()) {
      CsvSource rows = method.getAnnotation(CsvSource.class);
      if (rows != null && method.getParameterCount() == 3) {
        for (String row : Splitter.on('\n').omitEmptyStrings().split(rows.textBlock())) {
          List<String> cells = Splitter.on("=>").trimResults().splitToList(row);
          String spoilt = cells.get(1).equals("''") ? "" : cells.get(1);
          page.add(EachLanguage.of(refusal.apply(cells.get(0), spoilt)));
        }
      }
    }
  }
}
