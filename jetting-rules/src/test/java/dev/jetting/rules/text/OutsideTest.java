package dev.jetting.rules.text;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Where sentences still stand in the code, and so in English only. The list is to shrink: a class
 * whose sentences have moved into the bundles must leave it, and none may come in.
 *
 * <p>Messages that stand beside the exception, which developers read, are not counted. Nor is the
 * law kit.
 */
class OutsideTest {

  private static final Path SOURCES = Path.of("src/main/java/dev/jetting/rules");

  private static final Set<String> ENGLISH_ONLY =
      new TreeSet<>(
          Set.of(
              // Measures, which measures_*.properties words. Remarks on rule files are for their
              // authors, in English.
              "json/",
              // Notes and pieces of names.
              "MachineDescription.java",
              "RemedyWords.java",
              "Rule.java",
              "kit/KitWaivers.java",
              "kit/PartRows.java",
              "search/NeedlePosition.java",
              "tuning/Meanings.java",
              // The pages of the standard rules are documents.
              "standard/RulePages.java"));

  /**
   * Names of limits, spreads and units, whose words in each language are in the bundles by that
   * name.
   */
  private static final Set<String> NAMES =
      Set.of(
          "Measure.java",
          "Premises.java",
          "risk/MarginLimits.java",
          "risk/ModelUncertainty.java",
          "risk/RiddenSpeeds.java",
          "risk/UphillRisk.java",
          "standard/RuleLimits.java");

  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);
  private static final Pattern JOINT = Pattern.compile("\"\\s*\\+\\s*\"");
  private static final Pattern FAULT =
      Pattern.compile(
          "(?:throw|new"
              + " \\w*(?:Exception|Misplaced)\\(|[cC]heck\\w*[.(]|refused?\\(|failure\\()[^;]*;");
  private static final Pattern SENTENCE =
      Pattern.compile("\"[^\"\\n]*[\\p{L}']+ [\\p{Ll}λ']+ [\\p{Ll}λ']+ [\\p{Ll}λ']+[^\"\\n]*\"");

  @Test
  void sentencesInCode_standInTheseClassesOnly() throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(OutsideTest::hasSentence)
          .map(file -> SOURCES.relativize(file).toString().replace('\\', '/'))
          .map(file -> file.replaceFirst("^json/.*", "json/"))
          .filter(file -> !file.startsWith("laws/") && !NAMES.contains(file))
          .forEach(found::add);
    }
    assertThat(found).isEqualTo(ENGLISH_ONLY);
  }

  private static boolean hasSentence(Path file) {
    try {
      String code = COMMENT.matcher(Files.readString(file, UTF_8)).replaceAll("");
      String joined = JOINT.matcher(code).replaceAll("");
      return SENTENCE.matcher(FAULT.matcher(joined).replaceAll("")).find();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
