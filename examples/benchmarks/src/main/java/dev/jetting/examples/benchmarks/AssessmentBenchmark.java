package dev.jetting.examples.benchmarks;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A full assessment beside a bare sweep of the same throttle openings. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class AssessmentBenchmark {

  private static final List<ThrottleOpening> OPENINGS = MixtureModel.evenOpenings(41);

  private final RiskModel riskModel = RiskModel.assumed();

  /** Baseline: the mixture at 41 throttle openings, nothing else. */
  @Benchmark
  public List<MixturePoint> bareSweep() {
    return MixtureModel.of(Parts.SHEET.setup()).sweep(OPENINGS);
  }

  /** Baseline: the lean risk at the same openings with each part's effect, without a rulebook. */
  @Benchmark
  public RiskProfile leanRisk() {
    return riskModel.profile(MixtureModel.of(Parts.SHEET.setup()), OPENINGS);
  }

  /** The lean risk at the same openings, the overrun, and a report of the standard rulebook. */
  @Benchmark
  public Report assessment() {
    MixtureModel model = MixtureModel.of(Parts.SHEET.setup());
    RiskProfile profile = riskModel.profile(model, OPENINGS);
    return StandardRulebook.rulebook()
        .evaluate(
            new AssessedSetting(
                Parts.SHEET, riskModel, profile, profile, profile, model.overrun()));
  }

  /** As a program embeds it, and the report; the three days of the sheet are one. */
  @Benchmark
  public Report assessmentOfThreeDays() {
    return StandardRulebook.rulebook().evaluate(AssessedSetting.of(Parts.SHEET));
  }
}
