package dev.jetting.rules.standard;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.function.Function.identity;
import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the standard rulebook says of settings that a tuner calls good. */
class GoodSettingsTest {

  private static final List<Report> REPORTS =
      GoodSettings.sheets().stream()
          .map(sheet -> StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheet)))
          .toList();

  @Test
  void goodSettings_areTwenty_andPass() {
    assertThat(REPORTS).hasSize(20);
    assertThat(REPORTS).allSatisfy(report -> assertThat(report.passes()).isTrue());
  }

  @Test
  void threeQuarters_comeOutWithoutAWarning() {
    assertThat(REPORTS.stream().filter(report -> warnings(report).isEmpty()))
        .as(counted())
        .hasSizeGreaterThanOrEqualTo(15);
  }

  @Test
  void warnings_areTheOnesThatTheDocumentCounts() throws IOException {
    String document = Files.readString(Path.of("DECISIONS.md"), UTF_8);
    assertThat(document).contains(counted());
  }

  private static String counted() {
    long clean = REPORTS.stream().filter(report -> warnings(report).isEmpty()).count();
    String byRule =
        REPORTS.stream()
            .flatMap(report -> warnings(report).stream().map(RankedFinding::ruleId).distinct())
            .collect(groupingBy(identity(), TreeMap::new, counting()))
            .entrySet()
            .stream()
            .map(
                rule -> "| settings with a warning of `" + rule.getKey() + "` | " + rule.getValue())
            .collect(joining(" |\n"));
    return Stream.of(
            "| good settings | " + REPORTS.size(),
            "| without a danger | " + REPORTS.stream().filter(Report::passes).count(),
            "| without a warning | " + clean,
            byRule)
        .collect(joining(" |\n", "", " |"));
  }

  private static List<RankedFinding> warnings(Report report) {
    return report.findings().stream()
        .filter(finding -> finding.severity() == Severity.WARNING)
        .toList();
  }
}
