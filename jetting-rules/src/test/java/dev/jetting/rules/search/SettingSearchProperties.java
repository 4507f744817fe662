package dev.jetting.rules.search;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.arbitraries.PlausibleArbitraries;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewTurns;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** The search against looking at every combination the plain way. */
class SettingSearchProperties {

  private static final RiskModel RISK = RiskModel.assumed();

  /** A sheet with parts around its setting, some owned, some priced. */
  record Task(SetupSheet sheet, Choices choices) {}

  @Provide
  Arbitrary<Task> tasks() {
    return Combinators.combine(
            PlausibleArbitraries.sheets(),
            Arbitraries.integers().between(-2, 8),
            Arbitraries.integers().between(0, 31),
            Arbitraries.of(true, false))
        .as(
            (sheet, richer, owned, priced) ->
                new Task(sheet, around(sheet.setup().setting(), richer, owned, priced)))
        .withoutEdgeCases();
  }

  /**
   * 2 pilots, 2 screws, 2 slides, 2 needle jets, 2 needles with 2 grooves, 3 mains: 192 settings.
   */
  private static Choices around(Setting s, int richer, int owned, boolean priced) {
    Needle n = s.needle();
    Needle thicker =
        Needle.builder()
            .id("much thicker")
            .cylinder(Diameter.ofMillimetres(n.cylinder().millimetres() + 0.03 * (richer + 3)))
            .tapers(n.tapers())
            .grooves(n.grooves())
            .groovePitch(n.groovePitch())
            .tip(n.tip())
            .build();
    double main = s.mainJet().millimetres();
    double pilot = s.pilotJet().millimetres();
    NeedleJet wider =
        new NeedleJet(
            Diameter.ofMillimetres(s.needleJet().bore().millimetres() + 0.01 * richer),
            s.needleJet().neck());
    List<NeedlePosition> hung =
        Stream.of(n, thicker)
            .map(needle -> new NeedlePosition(needle, NeedlePosition.inAnyGroove(needle).clips()))
            .map(
                h ->
                    new NeedlePosition(
                        h.needle(), h.clips().subList(0, Math.min(2, h.clips().size()))))
            .toList();
    return Choices.builder()
        .pilotJets(
            jets(
                List.of(s.pilotJet(), JetBore.ofMillimetres(pilot + 0.015 * (richer + 3))),
                (owned & 1) == 1,
                priced))
        .screws(List.of(s.screw().turns(), ScrewTurns.of(s.screw().turns().turns() + 0.25)))
        .cutaways(
            choices(
                List.of(s.cutaway(), Cutaway.ofMillimetres(s.cutaway().millimetres() / 2)),
                (owned & 2) == 2,
                priced))
        .needleJets(
            choices(
                richer == 0 ? List.of(s.needleJet()) : List.of(s.needleJet(), wider),
                (owned & 4) == 4,
                priced))
        .needles(choices(hung, (owned & 8) == 8, priced))
        .mainJets(
            jets(
                List.of(
                    s.mainJet(),
                    JetBore.ofMillimetres(main + 0.02 * (richer + 3)),
                    JetBore.ofMillimetres(main + 0.05 * (richer + 3))),
                (owned & 16) == 16,
                priced))
        .build();
  }

  /** Each but the first less well known than the one before. */
  private static List<Choice<JetBore>> jets(List<JetBore> jets, boolean owned, boolean priced) {
    List<Choice<JetBore>> choices = new ArrayList<>();
    for (Choice<JetBore> jet : choices(jets, owned, priced)) {
      choices.add(jet.withUncertainty(0.01 * choices.size()));
    }
    return choices;
  }

  private static <P> List<Choice<P>> choices(List<P> parts, boolean owned, boolean priced) {
    List<Choice<P>> choices = new ArrayList<>();
    for (P part : parts) {
      boolean first = choices.isEmpty();
      BigDecimal price = new BigDecimal(choices.size() + "." + (first ? "5" : "25"));
      choices.add(
          first && owned
              ? Choice.ofOwned(part)
              : priced ? Choice.toBuy(part, price) : Choice.toBuy(part));
    }
    return choices;
  }

  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void bestAndFront_areThoseOfPlainEnumeration(@ForAll("tasks") Task task) {
    SettingSearch search = SettingSearch.of(task.sheet, task.choices, RISK).spending(1);
    Plain plain = new Plain(task.sheet, task.choices, RISK);
    List<Plain.Weighed> all = plain.all();
    for (int count : new int[] {1, 7, 1000}) {
      Found best = search.best(count, Run.alone());
      assertThat(best.settings().stream().map(Plain.Weighed::of)).isEqualTo(Plain.best(all, count));
      assertThat(best.complete()).isTrue();
      assertThat(best.combinations() - best.impossible()).isEqualTo(all.size());
    }
    FoundSetting first = search.best(1, Run.alone()).settings().get(0);
    SetupSheet its = task.sheet.withSetup(task.sheet.setup().withSetting(first.setting()));
    AssessedSetting assessed = AssessedSetting.of(its, search.riskModel(first.pick()));
    assertThat(Stream.of(assessed.profile(), assessed.coldest(), assessed.hottest()))
        .extracting(day -> day.worst().leanRisk())
        .contains(first.leanRisk())
        .allMatch(risk -> !risk.isMoreThan(first.leanRisk()));
    Found front = search.front(Cost.NEW_PARTS, Run.alone());
    assertThat(front.settings().stream().map(Plain.Weighed::of)).isEqualTo(plain.front(all));
    if (all.stream().allMatch(w -> w.price().isPresent())) {
      assertThat(search.front(Cost.PRICE, Run.alone()).settings().stream().map(Plain.Weighed::of))
          .isEqualTo(plain.front(all, w -> w.price().orElseThrow()));
    }
  }

  @Property(tries = 15, shrinking = ShrinkingMode.OFF)
  void constraints_leaveTheBestOfWhatTheyAllow(@ForAll("tasks") Task task) {
    Choices kept = task.choices.keeping(PartKind.SLIDE, task.sheet.setup().setting());
    SettingSearch search = SettingSearch.of(task.sheet, kept, RISK).spending(1).buyingAtMost(2);
    List<Plain.Weighed> all = new Plain(task.sheet, kept, RISK).all();
    List<Plain.Weighed> allowed = all.stream().filter(w -> w.newParts() <= 2).toList();
    assertThat(search.best(5, Run.alone()).settings().stream().map(Plain.Weighed::of))
        .isEqualTo(Plain.best(allowed, 5));
    if (all.stream().allMatch(w -> w.price().isPresent())) {
      BigDecimal most = new BigDecimal("3.3");
      assertThat(
              search.payingAtMost(most).best(5, Run.alone()).settings().stream()
                  .map(Plain.Weighed::of))
          .isEqualTo(
              Plain.best(
                  allowed.stream()
                      .filter(w -> w.price().orElseThrow().compareTo(most) <= 0)
                      .toList(),
                  5));
    }
  }

  @Property(tries = 15, shrinking = ShrinkingMode.OFF)
  void result_isTheSameOnAnyNumberOfThreads(@ForAll("tasks") Task task) {
    SettingSearch search = SettingSearch.of(task.sheet, task.choices, RISK).spending(1);
    ExecutorService threads = Executors.newFixedThreadPool(3);
    try {
      for (int parallelism : new int[] {2, 3, 4}) {
        Run run = Run.on(parallelism, threads);
        assertThat(search.best(7, run)).isEqualTo(search.best(7, Run.alone()));
        assertThat(search.front(Cost.NEW_PARTS, run))
            .isEqualTo(search.front(Cost.NEW_PARTS, Run.alone()));
      }
    } finally {
      threads.shutdown();
    }
  }
}
