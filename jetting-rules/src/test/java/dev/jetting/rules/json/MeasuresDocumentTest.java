package dev.jetting.rules.json;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** RULE-FILES.md lists the measures of the table; {@code -Dgolden.update=true} writes it anew. */
class MeasuresDocumentTest {

  private static final Path DOCUMENT = Path.of("RULE-FILES.md");
  private static final String BEGIN = "<!-- measures, made from the table in the code -->\n";
  private static final String END = "<!-- end -->\n";

  @Test
  void everyQuantityOfARuleFile_hasAKind() {
    for (Dimension dimension : Dimension.values()) {
      assertThat(dimension.measure(1).kind()).as(dimension.name()).isPresent();
    }
  }

  @Test
  void document_listsEveryMeasure() throws IOException {
    String document = Files.readString(DOCUMENT);
    int from = document.indexOf(BEGIN) + BEGIN.length();
    int to = document.indexOf(END, from);

    if (Documents.UPDATE) {
      Files.writeString(DOCUMENT, document.substring(0, from) + table() + document.substring(to));
    } else {
      assertThat(document.substring(from, to)).isEqualTo(table());
    }
  }

  @Test
  void document_showsARuleFileThatIsOne() throws IOException {
    String document = Files.readString(DOCUMENT);
    int from = document.indexOf("```json\n") + "```json\n".length();
    String example = document.substring(from, document.indexOf("```", from));

    assertThat(RuleFile.read(example).rules()).hasSize(2);
    assertThat(Validators.RULE_FILE.complaints(example)).isEmpty();
  }

  private static String table() {
    return "| measure | what it is | over throttle | written as |\n|---|---|---|---|\n"
        + MeasureDefinitions.all().stream().map(MeasuresDocumentTest::row).collect(joining());
  }

  private static String row(MeasureDefinition definition) {
    String written =
        definition instanceof MeasureDefinition.Numeric number
            ? number.dimension().allowed().toString()
            : "text";
    return "| `"
        + definition.name()
        + "` | "
        + definition.words()
        + " | "
        + (definition instanceof MeasureDefinition.Swept ? "yes" : "")
        + " | "
        + written
        + " |\n";
  }
}
