package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.text.EachLanguage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What the readers of JSON refuse in the tests of bad documents, in all languages, to be read. */
class RefusalPageTest {

  @Test
  void everyRefusal_isOnThePage() throws IOException {
    Set<String> page = new TreeSet<>();
    page.addAll(EachLanguage.table(BadSheetTest.class, BadSheetTest::refused));
    page.addAll(EachLanguage.table(BadRuleFileTest.class, BadRuleFileTest::refusal));
    for (String document : new String[] {"", "{}", "{} {}", "{", "null", "[]", "\"E5\""}) {
      page.add(EachLanguage.of(BadSheetTest.refusal(document)));
    }
    assertThat(page).hasSizeGreaterThan(110);
    EachLanguage.assertPage(Path.of("src/test/resources/dev/jetting/rules/text/errors.txt"), page);
  }
}
