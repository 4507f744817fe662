package dev.jetting.rules;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The documents of decisions name tests that exist. */
class DecisionsTest {

  private static final Pattern DECISIONS = Pattern.compile(".*/jetting-[a-z]+/DECISIONS\\.md");
  private static final Pattern TEST = Pattern.compile(".*/src/test/java/.*\\.java");

  /** From "Held by" to the end of the paragraph. */
  private static final Pattern HELD_BY = Pattern.compile("Held by:(?:.|\\n(?!\\n))*");

  private static final Pattern NAME = Pattern.compile("`([A-Z]\\w*)`");

  @Test
  void everyTestThatHoldsADecision_exists() throws IOException {
    Set<String> tests =
        RepositoryFiles.matching(TEST).stream()
            .map(file -> file.getFileName().toString().replace(".java", ""))
            .collect(Collectors.toSet());
    List<Path> documents = RepositoryFiles.matching(DECISIONS);
    assertThat(documents).hasSizeGreaterThan(2);

    for (Path document : documents) {
      assertThat(heldBy(Files.readString(document, UTF_8)))
          .as("tests after \"Held by\" in %s", document)
          .isNotEmpty()
          .isSubsetOf(tests);
    }
  }

  @Test
  void heldBy_isEveryNameOfTheParagraph() {
    String text = "`NoTest` does.\n\n*Held by:* `ATest`,\n`BTest`, the rest.\n\nA `CTest`.\n";
    assertThat(heldBy(text)).containsExactlyInAnyOrder("ATest", "BTest");
  }

  private static Set<String> heldBy(String text) {
    return HELD_BY
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .flatMap(paragraph -> NAME.matcher(paragraph).results().map(name -> name.group(1)))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
