package dev.jetting.examples.benchmarks;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.laws.Candidate;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.LawReport;
import dev.jetting.rules.laws.Trial;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** All laws on the standard rulebook, beside assessing as many sheets. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LawKitBenchmark {

  private final Rulebook rulebook = StandardRulebook.rulebook();

  /** Baseline: the same trials' sheets, each before and after its change, assessed and reported. */
  @Benchmark
  public int assessments() {
    int findings = 0;
    for (int i = 0; i < 32; i++) {
      Report report = rulebook.evaluate(AssessedSetting.of(Parts.SHEET));
      findings += report.findings().size();
    }
    return findings;
  }

  /** All laws, each part one step richer and one leaner: sixteen trials. */
  @Benchmark
  public LawReport laws() {
    return LawKit.allLaws()
        .hold(
            Candidate.of(rulebook), Trial.eachPart(Parts.SHEET, CustomarySteps.assumed()));
  }
}
