package dev.jetting.rules.search;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.ProvenObservation;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SettingSearchTest {

  private static final RiskModel RISK = RiskModel.assumed();
  private static final Choices SHELF = Shelf.of(15, 1, 5, 4, 5, 20);
  private static final SettingSearch SEARCH =
      SettingSearch.of(Shelf.SHEET, SHELF, RISK).spending(1);

  /** 15·5·4·25·20 settings. The bounds must leave few to compute. */
  @Test
  void bounds_passOverNearlyAll() {
    var searched =
        SEARCH.search(() -> new BestCollector(10, 0.05), BestCollector::kept, Run.alone());
    assertThat(searched.found().combinations()).isEqualTo(150_000);
    assertThat(searched.workedOut()).isBetween(10L, 7_500L);
    assertThat(searched.found().settings()).hasSize(10).isSortedAccordingTo(byDistance());
  }

  /** On an engine nobody has read a search is that of an owner who accepts a fifth. */
  @Test
  void best_unlessTheEngineWasRead_keepsFourFifthsOfTheAcceptedRiskInHand() {
    Riding riding = Shelf.SHEET.riding();
    double fifth = riding.acceptedRisk().value() * Riding.SHARE_FOR_UNREAD;
    SetupSheet careful = Shelf.SHEET.withRiding(riding.withAcceptedRisk(Probability.of(fifth)));
    Choices around = around(Shelf.toBuy(8, 1.22, 0.02, JetBore::ofMillimetres));
    SettingSearch unread = SettingSearch.of(Shelf.SHEET, around, RISK);

    assertThat(unread.spendable().value()).isEqualTo(fifth);
    assertThat(unread.best(30, Run.alone()).settings().stream().map(Plain.Weighed::of))
        .isEqualTo(
            SettingSearch.of(careful, around, RISK)
                .spending(1)
                .best(30, Run.alone())
                .settings()
                .stream()
                .map(Plain.Weighed::of)
                .toList());
  }

  @Test
  void spending_outOfRange_isRefused() {
    for (double share : new double[] {0, -0.1, 1.1, Double.NaN}) {
      assertThatThrownBy(() -> SEARCH.spending(share))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("more than 0, at most 1");
    }
  }

  /** Near a good setting, where right and too rich lie side by side and each bound has its say. */
  @Test
  void bestAndFront_aroundAGoodSetting_areThoseOfPlainEnumeration() {
    Choices around = around(Shelf.toBuy(8, 1.22, 0.02, JetBore::ofMillimetres));
    SettingSearch search = SettingSearch.of(Shelf.SHEET, around, RISK).spending(1);
    Plain plain = new Plain(Shelf.SHEET, around, RISK);
    List<Plain.Weighed> all = plain.all();
    Map<Standing, Long> standings =
        all.stream().collect(groupingBy(Plain.Weighed::standing, counting()));
    assertThat(standings).hasSize(Standing.values().length);
    assertThat(standings.values()).allSatisfy(count -> assertThat(count).isGreaterThan(3));

    for (int count : new int[] {1, 2, 3, 4, 5, 30}) {
      assertThat(search.best(count, Run.alone()).settings().stream().map(Plain.Weighed::of))
          .as("best %s", count)
          .isEqualTo(Plain.best(all, count));
    }
    List<Plain.Weighed> front = plain.front(all);
    assertThat(search.front(Cost.NEW_PARTS, Run.alone()).settings().stream().map(Plain.Weighed::of))
        .isEqualTo(front);
    assertThat(front).hasSizeGreaterThan(3).allMatch(w -> w.standing() == Standing.RIGHT);
    assertThat(all).as("one that is not right beats a right one").anyMatch(w -> beatsAny(w, front));
  }

  private static Choices around(List<Choice<JetBore>> mainJets) {
    Setting good = TwoHundred.ALL_ROUND;
    return Choices.builder()
        .pilotJets(Shelf.toBuy(4, 0.53, 0.02, JetBore::ofMillimetres))
        .screws(List.of(good.screw().turns()))
        .cutaways(Shelf.toBuy(2, 3.5, 0.5, Cutaway::ofMillimetres))
        .needleJets(List.of(Choice.toBuy(good.needleJet())))
        .needles(List.of(Choice.toBuy(NeedlePosition.inAnyGroove(good.needle()))))
        .mainJets(mainJets)
        .build();
  }

  /** On an engine with a proof the search agrees with an assessment with the proof. */
  @Test
  void best_ofAProvenEngine_isThatOfPlainEnumeration_withTheProof() {
    SetupSheet proven =
        Shelf.SHEET.withProvenance(
            Provenance.builder()
                .observed(
                    new ProvenObservation(
                        ThrottleOpening.FULL, new Evidence.Wideband(Lambda.of(0.93))),
                    new ProvenObservation(ThrottleOpening.ofEighths(2), new Evidence.Proven()))
                .build());
    Choices around = around(Shelf.toBuy(6, 1.26, 0.04, JetBore::ofMillimetres));
    List<Plain.Weighed> plain = Plain.best(new Plain(proven, around, RISK).all(), 12);
    List<Plain.Weighed> found =
        SettingSearch.of(proven, around, RISK).spending(1).best(12, Run.alone()).settings().stream()
            .map(Plain.Weighed::of)
            .toList();

    assertThat(found).extracting(Plain.Weighed::pick).isEqualTo(picks(plain));
    for (int i = 0; i < plain.size(); i++) {
      assertThat(found.get(i).standing()).isEqualTo(plain.get(i).standing());
      assertThat(found.get(i).leanRisk()).isCloseTo(plain.get(i).leanRisk(), within(1e-9));
      assertThat(found.get(i).distance()).isCloseTo(plain.get(i).distance(), within(1e-9));
    }
    List<Plain.Weighed> unproven = Plain.best(new Plain(Shelf.SHEET, around, RISK).all(), 12);
    assertThat(picks(plain)).as("the proof changes the answer").isNotEqualTo(picks(unproven));
  }

  private static List<ChoiceIndices> picks(List<Plain.Weighed> weighed) {
    return weighed.stream().map(Plain.Weighed::pick).toList();
  }

  @Test
  void front_whereNoneIsRight_isThatOfAll() {
    List<Choice<JetBore>> mainJets =
        Stream.of(1.24, 1.26, 1.45, 1.5).map(JetBore::ofMillimetres).map(Choice::toBuy).toList();
    Plain plain = new Plain(Shelf.SHEET, around(mainJets), RISK);

    Found front =
        SettingSearch.of(Shelf.SHEET, around(mainJets), RISK)
            .spending(1)
            .front(Cost.NEW_PARTS, Run.alone());

    assertThat(front.settings().stream().map(Plain.Weighed::of))
        .isEqualTo(plain.front(plain.all()));
    assertThat(front.settings().stream().map(FoundSetting::standing))
        .contains(Standing.TOO_RICH, Standing.TOO_LEAN)
        .doesNotContain(Standing.RIGHT);
  }

  /** What is known to be too rich is no first right setting to look out for. */
  @Test
  void frontWhereAllAreTooRich_passesOverMost() {
    Choices rich = SHELF.withMainJets(Shelf.toBuy(20, 1.6, 0.02, JetBore::ofMillimetres));
    var searched =
        SettingSearch.of(Shelf.SHEET, rich, RISK)
            .spending(1)
            .search(
                () -> new ParetoCollector(0.05, 0.25, Cost.NEW_PARTS),
                ParetoCollector::kept,
                Run.alone());
    assertThat(searched.found().settings()).noneMatch(f -> f.standing() == Standing.RIGHT);
    assertThat(searched.workedOut()).isBetween(10L, 37_500L);
  }

  /**
   * The better of two right settings comes after some that are too rich and beat it in everything.
   */
  @Test
  void front_takesTheRightSettingAfterOthersThatBeatIt() {
    NeedlePosition hung =
        new NeedlePosition(
            TwoHundred.NEEDLE, List.of(ClipPosition.fromTop(3, 5), ClipPosition.fromTop(2, 5)));
    Choices choices =
        around(List.of(Choice.toBuy(JetBore.ofMillimetres(1.36))))
            .withPilotJets(
                Stream.of(0.64, 0.65, 0.56).map(JetBore::ofMillimetres).map(Choice::toBuy).toList())
            .withNeedles(List.of(Choice.toBuy(hung)));
    Plain plain = new Plain(Shelf.SHEET, choices, RISK);

    Found front =
        SettingSearch.of(Shelf.SHEET, choices, RISK).spending(1).front(Cost.NEW_PARTS, Run.alone());

    assertThat(front.settings().stream().map(Plain.Weighed::of))
        .isEqualTo(plain.front(plain.all()));
    assertThat(front.settings()).singleElement().matches(f -> f.standing() == Standing.RIGHT);
  }

  private static boolean beatsAny(Plain.Weighed other, List<Plain.Weighed> front) {
    return other.standing() != Standing.RIGHT
        && front.stream()
            .anyMatch(w -> other.leanRisk() < w.leanRisk() && other.distance() < w.distance());
  }

  private static java.util.Comparator<FoundSetting> byDistance() {
    return java.util.Comparator.comparing(FoundSetting::distance);
  }

  @Test
  void found_isWhatAnAssessmentTells() {
    for (FoundSetting found : SEARCH.best(3, Run.alone()).settings()) {
      var sheet = Shelf.SHEET.withSetup(Shelf.SHEET.setup().withSetting(found.setting()));
      AssessedSetting assessed = AssessedSetting.of(sheet, RISK);
      double risk =
          Stream.of(assessed.profile(), assessed.coldest(), assessed.hottest())
              .mapToDouble(profile -> profile.worst().leanRisk().value())
              .max()
              .orElseThrow();
      assertThat(found.leanRisk().value()).isEqualTo(risk).isLessThanOrEqualTo(0.05);
      assertThat(found.standing()).isNotEqualTo(Standing.TOO_LEAN);
      assertThat(found.newParts()).hasSize(5);
      List<String> findings =
          StandardRulebook.rulebook().evaluate(assessed).findings().stream()
              .map(RankedFinding::ruleId)
              .toList();
      assertThat(findings).doesNotContain("lean-anywhere", "pilot-on-overrun");
      assertThat(findings.contains("too-rich")).isEqualTo(found.standing() == Standing.TOO_RICH);
    }
  }

  @Test
  void cancelled_endsWithWhatItHasAndSaysSo() {
    AtomicInteger asked = new AtomicInteger();
    Found found = SEARCH.best(5, Run.alone().until(() -> asked.incrementAndGet() > 700));
    assertThat(found.complete()).isFalse();
    assertThat(asked.get()).isGreaterThan(700);
    Found none = SEARCH.best(5, Run.alone().until(() -> true));
    assertThat(none.complete()).isFalse();
    assertThat(none.settings()).isEmpty();
  }

  /** With jets alone to choose there is a single ring, and a stop comes between two main jets. */
  @Test
  void cancelledBetweenMainJets_countsThoseItCameToAndNoMore() {
    Setting own = Shelf.SHEET.setup().setting();
    Choices oneGroove = Shelf.of(2, 1, 1, 1, 1, 15).keeping(PartKind.CLIP, own);
    SettingSearch jets = SettingSearch.of(Shelf.SHEET, oneGroove, RISK).spending(1);
    Found whole = jets.best(30, Run.alone());
    assertThat(whole.settings()).hasSize(30);

    Set<Integer> found = new HashSet<>();
    for (int stop = 0; stop < 30; stop++) {
      int most = stop;
      AtomicInteger asked = new AtomicInteger();
      AtomicLong reported = new AtomicLong();
      Run run =
          Run.alone()
              .until(() -> asked.incrementAndGet() > most)
              .reportingTo((done, total) -> reported.set(done));

      Found cut = jets.best(30, run);

      assertThat(reported.get()).as("after %s asks", stop).isEqualTo(cut.settings().size());
      assertThat(cut.complete()).as("after %s asks", stop).isEqualTo(cut.equals(whole));
      found.add(cut.settings().size());
    }
    assertThat(found).contains(0, 2, 14, 28, 30);
  }

  @Test
  void progress_risesToAllCombinations() {
    List<Long> reported = new ArrayList<>();
    SEARCH.best(
        1,
        Run.alone()
            .reportingTo(
                (done, total) -> {
                  assertThat(total).isEqualTo(150_000);
                  reported.add(done);
                }));
    assertThat(reported).isSorted().hasSizeGreaterThan(100);
    assertThat(reported.get(reported.size() - 1)).isEqualTo(150_000);
  }

  @Test
  void executorWithoutThreads_leavesTheWorkToTheCaller() {
    Run run =
        Run.on(
            4,
            task -> {
              throw new RejectedExecutionException("none to spare");
            });
    assertThat(SEARCH.best(3, run)).isEqualTo(SEARCH.best(3, Run.alone()));
  }

  @Test
  void executorThatNeverRunsATask_leavesTheWorkToTheCaller() {
    assertThat(SEARCH.best(3, Run.on(4, task -> {}))).isEqualTo(SEARCH.best(3, Run.alone()));
  }

  /** A fault of the caller's own is no fault of the search. */
  @Test
  void callbackThatThrows_endsTheSearchAndIsNamed() {
    IllegalStateException fault = new IllegalStateException("no more room");
    Run progress =
        Run.alone()
            .reportingTo(
                (done, total) -> {
                  throw fault;
                });
    Run cancelled =
        Run.alone()
            .until(
                () -> {
                  throw fault;
                });
    Run executor =
        Run.on(
            2,
            task -> {
              throw fault;
            });
    assertThatExceptionOfType(CallbackException.class)
        .isThrownBy(() -> SEARCH.best(3, progress))
        .withMessage("the caller's progress threw java.lang.IllegalStateException")
        .withCause(fault);
    for (Run run : List.of(progress, cancelled, executor)) {
      assertThatExceptionOfType(CallbackException.class)
          .isThrownBy(() -> SEARCH.best(3, run))
          .satisfies(
              e -> {
                assertThat(e.callback()).isIn("progress", "cancelled", "executor");
                assertThat(e.getCause()).isSameAs(fault);
              });
    }
  }

  /** A language without checked exceptions throws them undeclared; none may look like an end. */
  @Test
  void callbackThatThrowsACheckedException_endsTheSearchAndIsNamed() {
    IOException fault = new IOException("no such file");
    ExecutorService threads = Executors.newFixedThreadPool(3);
    try {
      for (Run run : List.of(Run.alone(), Run.on(4, threads))) {
        assertThatExceptionOfType(CallbackException.class)
            .isThrownBy(
                () ->
                    SEARCH.best(
                        3, run.until(() -> SettingSearchTest.<RuntimeException>undeclared(fault))))
            .withCause(fault);
      }
    } finally {
      threads.shutdownNow();
    }
  }

  @SuppressWarnings("unchecked") // no cast is made
  private static <E extends Exception> boolean undeclared(Exception fault) throws E {
    throw (E) fault;
  }

  @Test
  void interrupted_endsWithWhatItHasAndSaysSo() {
    Thread.currentThread().interrupt();
    Found found = SEARCH.best(5, Run.alone());
    assertThat(Thread.interrupted()).isTrue();
    assertThat(found.ending()).isEqualTo(SearchEnding.INTERRUPTED);
    assertThat(found.complete()).isFalse();
    assertThat(SEARCH.best(5, Run.alone().until(() -> true)).ending())
        .isEqualTo(SearchEnding.CANCELLED);
    assertThat(SEARCH.best(1, Run.alone()).ending()).isEqualTo(SearchEnding.COMPLETE);
  }

  @Test
  void interruptedOnTheWay_endsAtOnce() {
    AtomicInteger asked = new AtomicInteger();
    Thread caller = Thread.currentThread();
    Run run =
        Run.alone()
            .until(
                () -> {
                  if (asked.incrementAndGet() == 700) {
                    caller.interrupt();
                  }
                  return false;
                });
    Found found = SEARCH.best(5, run);
    assertThat(Thread.interrupted()).isTrue();
    assertThat(found.ending()).isEqualTo(SearchEnding.INTERRUPTED);
    assertThat(asked.get()).isBetween(700, 710);
  }

  @Test
  void priceWithoutPrices_isRefused() {
    assertThatThrownBy(() -> SEARCH.payingAtMost(BigDecimal.TEN))
        .hasMessage(
            "choices with a highest price: allowed only where every part to buy has a price; without"
                + " one: pilot 40, pilot 42, pilot 44 and 46 more");
    Choices three =
        Shelf.of(1, 1, 1, 2, 1, 1)
            .allOwned()
            .withNeedleJets(Shelf.of(1, 1, 1, 2, 1, 1).needleJets())
            .withNeedles(List.of(Choice.toBuy(NeedlePosition.inAnyGroove(Shelf.needle(0)))));
    assertThatThrownBy(
            () ->
                SettingSearch.of(Shelf.SHEET, three, RISK)
                    .spending(1)
                    .front(Cost.PRICE, Run.alone()))
        .hasMessage(
            "choices with the price as cost: allowed only where every part to buy has a price;"
                + " without one: needle jet 2.62 mm, needle jet 2.64 mm, needle 0");
  }

  @Test
  void numbersOutOfRange_areRefused() {
    assertThatThrownBy(() -> SEARCH.best(0, Run.alone()))
        .hasMessage("number of settings 0: allowed 1 to 10000");
    assertThatThrownBy(() -> SEARCH.buyingAtMost(-1))
        .hasMessage("most new parts -1: allowed 0 or more");
    assertThatThrownBy(() -> SEARCH.payingAtMost(new BigDecimal("-0.5")))
        .hasMessage("highest price -0.5: allowed 0 or more");
    assertThatThrownBy(() -> Run.on(0, Runnable::run))
        .hasMessage("parallelism 0: allowed 1 to 1024");
  }
}
