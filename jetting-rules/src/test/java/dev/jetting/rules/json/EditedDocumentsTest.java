package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.standard.StandardRulebook;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Documents that are JSON, and wrong or strange in a few places. */
class EditedDocumentsTest {

  /** More of them: {@code -Dfuzz.edits=100000}. */
  private static final int DOCUMENTS = Integer.getInteger("fuzz.edits", 60);

  @ParameterizedTest
  @EnumSource
  void document_withAFewEdits_isReadOrRefused(FuzzedKind kind) {
    Edits edits = new Edits(kind.examples());
    for (int i = 0; i < DOCUMENTS; i++) {
      assertHolds(kind, edits, i);
    }
  }

  /** What is read is read back, and a sheet has a report without a broken rule. */
  static void assertHolds(FuzzedKind kind, Edits edits, long seed) {
    String document = edits.of(new Random(seed));
    try {
      Optional<?> read = kind.read(document.getBytes(StandardCharsets.UTF_8));
      if (read.isPresent() && read.get() instanceof SetupSheet sheet) {
        assertIsAnswered(sheet);
      }
    } catch (AssertionError | RuntimeException | StackOverflowError e) {
      String shown = document.length() > 20_000 ? document.substring(0, 20_000) : document;
      throw new AssertionError(kind + ", edits of seed " + seed + ": " + shown, e);
    }
  }

  private static void assertIsAnswered(SetupSheet sheet) {
    Report report = StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheet));
    assertThat(report.results())
        .noneMatch(result -> result.outcome().status() == Outcome.Status.BROKEN);
    assertThat(ReportJson.read(ReportJson.write(report))).isEqualTo(report);
  }
}
