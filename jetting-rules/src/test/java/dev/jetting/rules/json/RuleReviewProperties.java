package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import com.google.common.base.Splitter;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.arbitraries.SheetArbitraries;
import dev.jetting.rules.json.RuleRemark.Kind;
import dev.jetting.rules.json.Threshold.Against;
import dev.jetting.rules.json.Threshold.OtherMeasure;
import dev.jetting.rules.json.Threshold.Stated;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.lifecycle.AfterContainer;

/** What a review calls impossible, always true or implied, no random setting contradicts. */
class RuleReviewProperties {

  private static final Map<Kind, Integer> SEEN = new EnumMap<>(Kind.class);

  private static final ThrottleBand MIDDLE = ThrottleBand.eighths(2, 6);
  private static final ThrottleBand HALF = ThrottleBand.eighths(4, 8);
  private static final ThrottleBand BETWEEN =
      new ThrottleBand(ThrottleOpening.ofShare(0.49), ThrottleOpening.ofShare(0.51));

  private static final List<AssessedSetting> SETTINGS =
      IntStream.range(0, 20)
          .mapToObj(i -> AssessedSetting.of(SheetArbitraries.sheets().sample()))
          .toList();

  @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
  void remarks_areNeverContradicted(@ForAll("files") RuleFile file) {
    for (RuleRemark remark : file.review()) {
      SEEN.merge(remark.kind(), 1, Integer::sum);
      for (AssessedSetting setting : SETTINGS) {
        check(remark, file, setting);
      }
    }
  }

  /** The property says nothing of what is never found. */
  @AfterContainer
  static void everyKindWasFound() {
    assertThat(SEEN)
        .containsKeys(
            Kind.NEVER_HOLDS,
            Kind.ALWAYS_HOLDS,
            Kind.ADDS_NOTHING,
            Kind.IMPLIED,
            Kind.DOUBLED,
            Kind.UNKNOWN_TEXT);
  }

  private static void check(RuleRemark remark, RuleFile file, AssessedSetting setting) {
    int index = Integer.parseInt(steps(remark.pointer()).get(2));
    Rule rule = file.rules().get(index);
    RuleForm form = file.form().rules().get(index);
    Outcome outcome = rule.evaluate(setting);
    AssessedSetting seen = setting.within(rule.band());
    Supplier<String> as = () -> remark + " of " + file.toJson() + " came out " + outcome;
    switch (remark.kind()) {
      case NEVER_HOLDS -> {
        if (remark.pointer().endsWith("/require")) {
          assertThat(outcome.status()).as(as).isNotEqualTo(Status.PASSED);
        } else {
          assertThat(at(form, remark).judge(seen, true).holds()).as(as).isFalse();
        }
      }
      case ALWAYS_HOLDS -> {
        if (remark.pointer().endsWith("/require")) {
          assertThat(outcome.status()).as(as).isNotEqualTo(Status.FAILED);
        } else {
          assertThat(at(form, remark).judge(seen, true).fails()).as(as).isFalse();
        }
      }
      case IMPLIED, DOUBLED -> {
        String named = remark.message().replaceAll(".*rule (one|two) .*", "$1");
        Outcome other =
            file.rules().stream()
                .filter(each -> each.id().equals(named))
                .findFirst()
                .orElseThrow()
                .evaluate(setting);
        if (outcome.status() == Status.FAILED) {
          assertThat(other.status()).as(as).isIn(Status.FAILED, Status.NOT_EVALUATED);
        }
        if (remark.kind() == Kind.DOUBLED && other.status() == Status.FAILED) {
          assertThat(outcome.status()).as(as).isIn(Status.FAILED, Status.NOT_EVALUATED);
        }
      }
      case ADDS_NOTHING -> {
        String parent = remark.pointer().replaceAll("/[0-9]+$", "");
        boolean all = parent.endsWith("/all");
        ConditionForm whole = form(form, parent.replaceAll("/(all|any)$", ""));
        int part = Integer.parseInt(remark.pointer().replaceAll(".*/", ""));
        List<ConditionForm> others =
            new ArrayList<>((all ? whole.all() : whole.any()).orElseThrow());
        ConditionForm left = others.remove(part);
        boolean othersDecide =
            others.stream().allMatch(o -> judge(o, seen, rule.band()) == (all ? 1 : -1));
        if (othersDecide) {
          assertThat(judge(left, seen, rule.band())).as(as).isNotEqualTo(all ? -1 : 1);
        }
      }
      case UNKNOWN_TEXT -> {}
      case EXAMPLE_FAILS, EXAMPLE_UNUSABLE, NO_EXAMPLE ->
          fail("a review tries no example: " + as.get());
    }
  }

  /** 1 holds, −1 fails, 0 open. */
  private static int judge(ConditionForm form, AssessedSetting setting, ThrottleBand band) {
    Judgement judgement = RuleFileReader.condition(band, Path.ROOT, form).judge(setting, true);
    return judgement.holds() ? 1 : judgement.fails() ? -1 : 0;
  }

  private static Condition at(RuleForm rule, RuleRemark remark) {
    return RuleFileReader.condition(
        rule.band().orElse(ThrottleBand.WHOLE), Path.ROOT, form(rule, remark.pointer()));
  }

  private static List<String> steps(String pointer) {
    return Splitter.on('/').splitToList(pointer);
  }

  private static ConditionForm form(RuleForm rule, String pointer) {
    List<String> steps = steps(pointer);
    ConditionForm form = steps.get(3).equals("when") ? rule.when().orElseThrow() : rule.require();
    for (int i = 4; i < steps.size(); i++) {
      form =
          switch (steps.get(i)) {
            case "not" -> form.not().orElseThrow();
            case "all" -> form.all().orElseThrow().get(Integer.parseInt(steps.get(++i)));
            default -> form.any().orElseThrow().get(Integer.parseInt(steps.get(++i)));
          };
    }
    return form;
  }

  @Provide
  Arbitrary<RuleFile> files() {
    Arbitrary<List<RuleForm>> twoRules =
        Combinators.combine(rules("one"), rules("two")).as((one, two) -> List.of(one, two));
    Arbitrary<List<RuleForm>> alike =
        Combinators.combine(rules("one"), rules("two"))
            .as((one, two) -> List.of(one, judgingAs(one, two)));
    return Arbitraries.frequencyOf(Tuple.of(2, twoRules), Tuple.of(1, alike))
        .map(
            rules ->
                RuleFileReader.read(
                    new RuleFileForm(RuleFileForm.FORMAT, RuleFileForm.VERSION, "n", "1", rules)));
  }

  /** Severity and band of one rule, conditions of another. */
  private static RuleForm judgingAs(RuleForm judge, RuleForm rule) {
    return new RuleForm(
        rule.id(),
        rule.formerIds(),
        rule.title(),
        rule.rationale(),
        rule.severity(),
        rule.tags(),
        rule.link(),
        rule.band(),
        judge.when(),
        judge.require(),
        rule.message(),
        rule.remedy(),
        rule.subject(),
        rule.examples(),
        rule.texts());
  }

  private static Arbitrary<RuleForm> rules(String id) {
    return Combinators.combine(
            Arbitraries.of(Severity.class), bands(), conditions(1).optional(0.3), conditions(2))
        .as(
            (severity, band, when, require) ->
                new RuleForm(
                    id,
                    Optional.empty(),
                    "t",
                    "r",
                    severity,
                    Optional.empty(),
                    Optional.empty(),
                    band,
                    when,
                    require,
                    "m",
                    "r",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
  }

  private static Arbitrary<ConditionForm> conditions(int deep) {
    if (deep == 0) {
      return leaves();
    }
    Arbitrary<ConditionForm> inner = conditions(deep - 1);
    Arbitrary<List<ConditionForm>> some = inner.list().ofMinSize(1).ofMaxSize(3);
    return Arbitraries.frequencyOf(
        Tuple.of(3, leaves()),
        Tuple.of(
            2,
            some.map(
                all ->
                    RuleFileArbitraries.of(Optional.of(all), Optional.empty(), Optional.empty()))),
        Tuple.of(
            2,
            some.map(
                any ->
                    RuleFileArbitraries.of(Optional.empty(), Optional.of(any), Optional.empty()))),
        Tuple.of(
            1,
            inner.map(
                not ->
                    RuleFileArbitraries.of(Optional.empty(), Optional.empty(), Optional.of(not)))));
  }

  /** Bands that lie in each other, and one that holds a single assessed opening. */
  private static Arbitrary<Optional<ThrottleBand>> bands() {
    return Arbitraries.frequencyOf(
        Tuple.of(3, Arbitraries.just(Optional.empty())),
        Tuple.of(1, Arbitraries.of(MIDDLE, HALF, BETWEEN).map(Optional::of)));
  }

  /** A few measures against a few limits, so that they meet often, and just on the numbers. */
  private static Arbitrary<ConditionForm> leaves() {
    Arbitrary<Optional<Threshold>> risks = thresholds("0", "0.05", "0.5", "1");
    Arbitrary<Optional<Threshold>> lambdas = thresholds("0.8", "0.9", "1.0", "1.1");
    Arbitrary<Optional<Threshold>> jets =
        Arbitraries.frequencyOf(
            Tuple.of(3, thresholds("0.5 mm", "1.2 mm", "10 mm")),
            Tuple.of(
                1,
                Combinators.combine(
                        Arbitraries.of("setting.mainJet", "setting.pilotJet"),
                        Arbitraries.of(0.5, 1.0, 2.0))
                    .as(
                        (other, times) ->
                            Optional.of(
                                new Against(
                                    new OtherMeasure(
                                        other,
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of(times)))))));
    return Arbitraries.oneOf(
        bounded("setting.mainJet", Optional.empty(), jets),
        bounded("setting.pilotJet", Optional.empty(), jets),
        bounded("riding.acceptedRisk", Optional.empty(), risks),
        bounded("mixture.leanRisk", Optional.of(Take.HIGHEST), risks),
        bounded("mixture.leanRisk", Optional.of(Take.MEAN), risks),
        texts("setting.screw.kind", "air", "mixture"),
        texts("engine.induction.kind", "reed valve", "piston port", "no inlet"),
        bounded("mixture.fuelShare.pilot", Optional.of(Take.HIGHEST), risks),
        bounded("mixture.lambda", Optional.of(Take.LOWEST), lambdas),
        bounded("mixture.lambda", Optional.of(Take.MEAN), lambdas),
        bounded("mixture.lambda", Optional.of(Take.HIGHEST), lambdas),
        bounded("setting.intake.effectiveArea", Optional.empty(), thresholds("600 mm²", "0 mm²")),
        bounded("setting.needle.grooves", Optional.empty(), thresholds("1", "3", "5")));
  }

  private static Arbitrary<Optional<Threshold>> thresholds(String... texts) {
    return Arbitraries.of(texts).map(text -> Optional.of(new Stated(text)));
  }

  /** Inside of every band of a rule. */
  private static Arbitrary<Optional<ThrottleBand>> withins() {
    return Arbitraries.frequencyOf(
        Tuple.of(4, Arbitraries.just(Optional.empty())),
        Tuple.of(1, Arbitraries.just(Optional.of(ThrottleBand.at(ThrottleOpening.ofEighths(4))))));
  }

  private static Arbitrary<ConditionForm> texts(String measure, String... texts) {
    return Arbitraries.of(texts)
        .list()
        .ofMinSize(1)
        .ofMaxSize(2)
        .map(
            oneOf ->
                new ConditionForm(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(measure),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(oneOf)));
  }

  private static Arbitrary<ConditionForm> bounded(
      String measure, Optional<Take> take, Arbitrary<Optional<Threshold>> limits) {
    return Combinators.combine(
            limits,
            limits.map(Optional::of).injectNull(0.6),
            Arbitraries.of(true, false),
            withins())
        .as(
            (one, other, most, within) -> {
              Optional<Threshold> second = other == null ? Optional.empty() : other.orElseThrow();
              return new ConditionForm(
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.of(measure),
                  take,
                  take.flatMap(any -> within),
                  most ? one : second,
                  most ? second : one,
                  Optional.empty(),
                  Optional.empty());
            });
  }
}
