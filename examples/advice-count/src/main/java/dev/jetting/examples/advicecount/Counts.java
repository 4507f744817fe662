package dev.jetting.examples.advicecount;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.examples.advicecount.Follower.Followed;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.arbitraries.PlausibleArbitraries;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.Run;
import dev.jetting.rules.search.SettingSearch;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.RandomGenerator;

/** The counts over drawn settings. */
final class Counts {

  private static final long SEED = 42;

  private final Rulebook rulebook = StandardRulebook.rulebook();
  private final Follower follower = new Follower(rulebook);

  private int drawn;
  private int passing;
  private int beyondParts;
  private int reachable;
  private int planPasses;
  private int planPassesOfReachable;
  private int walkPasses;
  private int walkPassesOfReachable;
  private int planDangers;
  private int walkDangers;
  private int cycles;
  private int bothWays;
  private final Map<Integer, Integer> planSteps = new TreeMap<>();
  private final Map<Integer, Integer> walkSteps = new TreeMap<>();
  private final Map<String, Integer> endings = new TreeMap<>();

  private Counts() {}

  /** Counts on a number of settings; the same number gives the same counts. */
  static Counts of(int settings) {
    Counts counts = new Counts();
    RandomGenerator<SetupSheet> generator = PlausibleArbitraries.sheets().generator(1000);
    Random random = new Random(SEED);
    for (int i = 0; i < settings; i++) {
      SetupSheet sheet = generator.next(random).value();
      counts.add(sheet.withParts(Box.around(sheet.setup().setting())));
    }
    return counts;
  }

  private void add(SetupSheet sheet) {
    drawn++;
    Report advised = follower.advise(sheet);
    passing += advised.passes() ? 1 : 0;
    Followed plan = follower.plan(sheet, advised);
    Followed walk = follower.firstRemedy(sheet, advised);
    planPasses += plan.end().passes() ? 1 : 0;
    walkPasses += walk.end().passes() ? 1 : 0;
    planDangers += plan.danger() ? 1 : 0;
    walkDangers += walk.danger() ? 1 : 0;
    cycles += walk.cycle() ? 1 : 0;
    bothWays += asksBothWays(advised) ? 1 : 0;
    planSteps.merge(plan.changes(), 1, Integer::sum);
    walkSteps.merge(walk.changes(), 1, Integer::sum);
    endings.merge(advised.plan().orElseThrow().ending().name(), 1, Integer::sum);
    if (hasDangerBeyondParts(plan.end()) || hasDangerBeyondParts(advised)) {
      beyondParts++;
    } else if (somethingPasses(sheet)) {
      reachable++;
      planPassesOfReachable += plan.end().passes() ? 1 : 0;
      walkPassesOfReachable += walk.end().passes() ? 1 : 0;
    }
  }

  /** A danger that is no matter of jets, such as a float valve too small. */
  private static boolean hasDangerBeyondParts(Report report) {
    return report.findings().stream()
        .anyMatch(
            finding ->
                finding.severity() == Severity.DANGER && isForNoPart(finding.finding().remedy()));
  }

  private static boolean isForNoPart(Remedy remedy) {
    return remedy instanceof Remedy.Advice advice && advice.text().contains("float valve");
  }

  private boolean somethingPasses(SetupSheet sheet) {
    List<FoundSetting> best =
        SettingSearch.of(sheet, Choices.of(sheet).allOwned(), RiskModel.assumed())
            .spending(1)
            .best(1, Run.alone())
            .settings();
    return !best.isEmpty()
        && rulebook
            .evaluate(
                AssessedSetting.of(
                    sheet.withSetup(sheet.setup().withSetting(best.get(0).setting()))))
            .passes();
  }

  private static boolean asksBothWays(Report report) {
    Map<MeteringPart, Remedy.Direction> ways = new EnumMap<>(MeteringPart.class);
    return report.findings().stream()
        .map(finding -> finding.finding().remedy())
        .filter(Remedy.Change.class::isInstance)
        .map(Remedy.Change.class::cast)
        .filter(change -> change.part() != MeteringPart.NEEDLE_DIAMETER)
        .anyMatch(
            change -> {
              Remedy.Direction before = ways.put(change.part(), change.direction());
              return before != null && before != change.direction();
            });
  }

  int cycles() {
    return cycles;
  }

  int dangers() {
    return planDangers + walkDangers;
  }

  int bothWays() {
    return bothWays;
  }

  int missed() {
    return reachable - planPassesOfReachable;
  }

  /** The document of the counts, in Markdown. */
  String document() {
    return String.format(
        Locale.ROOT,
        """
        # What comes of following the advice

        Made by the program beside it, on %d settings that `PlausibleArbitraries` draws (seed %d), each with an
        invented box of parts around its own. No share of drawn settings is a share of what is on the road.

        | what was counted | before | now |
        |---|--:|--:|
        | settings drawn | 200 | %d |
        | pass as they are | | %d |
        | have a danger that no jet remedies (float valve) | | %d |
        | first remedy again and again goes in a circle or never ends | 159 | %d |
        | first remedy again and again ends passing | | %d |
        | plan ends passing | | %d |
        | something passes among the parts at hand, by exact search | | %d |
        | of those, the plan ends passing | | %d |
        | of those, the first remedy again and again ends passing | | %d |
        | a danger that was not there, on the way of the plan | | %d |
        | a danger that was not there, on the way of first remedies | | %d |
        | reports that ask one part to go both ways | | %d |

        "Before" is what was counted when each rule chose its part alone; where it is empty, nobody counted.

        Changes in a plan, each with the number of plans: %s.
        First remedies followed until none is left, each with the number of settings: %s.
        Endings of the plans: %s.
        """,
        drawn,
        SEED,
        drawn,
        passing,
        beyondParts,
        cycles,
        walkPasses,
        planPasses,
        reachable,
        planPassesOfReachable,
        walkPassesOfReachable,
        planDangers,
        walkDangers,
        bothWays,
        listed(planSteps),
        listed(walkSteps),
        listed(endings));
  }

  private static String listed(Map<?, Integer> counts) {
    return counts.entrySet().stream()
        .map(entry -> entry.getKey() + ": " + entry.getValue())
        .collect(java.util.stream.Collectors.joining(", "));
  }
}
