package dev.jetting.examples.benchmarks;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.Cost;
import dev.jetting.rules.search.Found;
import dev.jetting.rules.search.NeedlePosition;
import dev.jetting.rules.search.Run;
import dev.jetting.rules.search.SettingSearch;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.JetBore;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The search on one thread, from nothing to the result, beside assessing one setting after another.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SearchBenchmark {

  /** A shelf of parts. */
  @State(Scope.Benchmark)
  public static class Shelf {
    /** About how many settings the parts allow. */
    @Param({"10000", "100000", "1000000", "3000000"})
    public int settings;

    private SettingSearch search = search(200);

    /** Builds the search, not its tables. */
    @Setup
    public void fill() {
      search = search(settings);
    }
  }

  private static SettingSearch search(int settings) {
    return SettingSearch.of(Parts.SHEET, Parts.about(settings), RiskModel.assumed()).spending(1);
  }

  /** The ten best settings. */
  @Benchmark
  public Found best(Shelf shelf) {
    return shelf.search.best(10, Run.alone());
  }

  /** The front of lean risk, distance and new parts. */
  @Benchmark
  public Found front(Shelf shelf) {
    return shelf.search.front(Cost.NEW_PARTS, Run.alone());
  }

  /** Baseline: 200 settings of a shelf assessed one after another, without a rulebook. */
  @Benchmark
  public double plainEnumerationOf200() {
    Choices choices = Parts.about(200);
    double sum = 0;
    for (Choice<JetBore> pilot : choices.pilotJets()) {
      for (var slide : choices.cutaways()) {
        for (var jet : choices.needleJets()) {
          for (Choice<NeedlePosition> needle : choices.needles()) {
            for (ClipPosition clip : needle.part().clips()) {
              for (Choice<JetBore> main : choices.mainJets()) {
                var setting =
                    Parts.SHEET
                        .setup()
                        .setting()
                        .withPilotJet(pilot.part())
                        .withCutaway(slide.part())
                        .withNeedleJet(jet.part())
                        .withNeedle(needle.part().needle(), clip)
                        .withMainJet(main.part());
                var sheet = Parts.SHEET.withSetup(Parts.SHEET.setup().withSetting(setting));
                sum += AssessedSetting.of(sheet).profile().worst().leanRisk().value();
              }
            }
          }
        }
      }
    }
    return sum;
  }
}
