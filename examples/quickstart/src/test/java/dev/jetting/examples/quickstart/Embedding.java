package dev.jetting.examples.quickstart;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.TradeStyle;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** The lines that README.md of the project shows; {@link EmbeddingExampleTest} compares the two. */
final class Embedding {

  private Embedding() {}

  static boolean assess(Path file, PrintStream out) throws IOException {
    // snippet
    var sheet = SheetJson.read(Files.readString(file));
    Report report = Adviser.of(StandardRulebook.rulebook()).advise(AssessedSetting.of(sheet));
    WorstSpot worst = report.worst();
    out.println("Lean risk " + TradeStyle.probability(worst.leanRisk()));
    out.println("at " + TradeStyle.throttle(worst.throttle()) + ", " + worst.speed());
    for (RankedFinding found : report.findings()) {
      out.println(found.severity() + ": " + found.finding().text());
    }
    report.plan().orElseThrow().steps().forEach(step -> out.println(step.stepMessage().text()));
    return report.passes(); // never a promise of safety
    // end of snippet
  }
}
