package dev.jetting.examples.quickstart;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EmbeddingExampleTest {

  private static final Path ROOT = Project.DIRECTORY.resolve("../..");

  @Test
  void snippet_isTenLinesInTheReadme() throws IOException {
    String snippet = snippet();
    assertThat(snippet.lines()).hasSize(10);
    String imports =
        source().lines().filter(line -> line.startsWith("import dev.")).collect(joining("\n"));
    assertThat(ROOT.resolve("README.md"))
        .as("README.md must show the snippet of Embedding.java in a block of ```java")
        .content(StandardCharsets.UTF_8)
        .contains("```java\n" + imports + "\n\n" + snippet + "```\n");
  }

  @Test
  void readme_showsTheDemosOwnTable() throws IOException {
    String page =
        Files.readString(
            Project.DIRECTORY.resolve(
                "src/test/resources/dev/jetting/examples/quickstart/golden/lean-in-the-middle.txt"));
    String table =
        page.substring(
            page.indexOf("                       90 % band"), page.indexOf("* an assumption"));
    String worst =
        page.lines().filter(line -> line.startsWith("worst  ")).findFirst().orElseThrow() + "\n";
    String plan =
        page.substring(page.indexOf("\n1. ") + 1, page.indexOf("After this nothing more"));
    assertThat(ROOT.resolve("README.md"))
        .content(StandardCharsets.UTF_8)
        .contains("```text\n" + table + "\n" + worst + "```\n")
        .contains("```text\n" + plan + "```\n");
  }

  @Test
  void assess_leanInTheMiddle_tellsWhereAndWhatToDo(@TempDir Path directory) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    boolean passes =
        Embedding.assess(
            file(directory, Demo.LEAN_IN_THE_MIDDLE),
            new PrintStream(out, true, StandardCharsets.UTF_8));

    assertThat(passes).isFalse();
    assertThat(out.toString(StandardCharsets.UTF_8))
        .startsWith("Lean risk ")
        .contains("DANGER: ", "Fit needle 2.00 thin in place of needle 2.04 thick");
  }

  @Test
  void assess_allRound_passesWithoutFindings(@TempDir Path directory) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    boolean passes =
        Embedding.assess(
            file(directory, Demo.MILD_ALL_ROUND),
            new PrintStream(out, true, StandardCharsets.UTF_8));

    assertThat(passes).isTrue();
    assertThat(out.toString(StandardCharsets.UTF_8)).doesNotContain("DANGER");
  }

  /** The same numbers as in the report, and no step towards lean without its condition. */
  @Test
  void assess_richStart_printsEachStepAsTheReportDoes(@TempDir Path directory) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Embedding.assess(
        file(directory, Demo.RICH_START), new PrintStream(out, true, StandardCharsets.UTF_8));

    assertThat(out.toString(StandardCharsets.UTF_8).lines().filter(line -> line.startsWith("Fit ")))
        .hasSize(3)
        .allMatch(line -> line.contains(": highest lean risk "))
        .allMatch(
            line -> line.endsWith(". Towards lean: only after a plug chop that shows it rich."));
  }

  private static String snippet() throws IOException {
    String source = source();
    String start = "// snippet\n";
    // Without its end: stripIndent takes an empty last line for one without indentation.
    return source
            .substring(source.indexOf(start) + start.length(), source.indexOf("    // end of"))
            .stripTrailing()
            .stripIndent()
        + "\n";
  }

  private static String source() throws IOException {
    return Files.readString(
        Project.DIRECTORY.resolve("src/test/java/dev/jetting/examples/quickstart/Embedding.java"));
  }

  private static Path file(Path directory, Demo demo) throws IOException {
    Path file = directory.resolve("setting.json");
    try (InputStream in = demo.open()) {
      Files.copy(in, file);
    }
    return file;
  }
}
