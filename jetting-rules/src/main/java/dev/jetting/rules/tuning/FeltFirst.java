package dev.jetting.rules.tuning;

import static java.util.Comparator.comparingDouble;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.Choices;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A start for a machine that is little known: no setting is both safe at idle, whatever the engine
 * is like, and still idles. A tuner fits the pilot jet on which it idles, and feels idle and an
 * eighth before he opens the throttle any further (common practice, no source). The needle stays.
 */
final class FeltFirst {

  /** From here up the lean risk is what the owner accepts; below, the rider feels first. */
  static final ThrottleOpening FROM_HERE_SAFE = Held.SMALL;

  private static final List<ThrottleOpening> FELT = List.of(ThrottleOpening.CLOSED, Held.EIGHTH);

  /** How many of the best are assessed (assumed). */
  private static final int LOOKED_AT = 40;

  /** How many main jets are tried with each, its own and bigger ones (assumed). */
  private static final int MAINS = 4;

  /** Where it may be lean without being felt at idle or an eighth. */
  private static final List<ThrottleOpening> BELOW =
      AssessedSetting.openings().stream()
          .filter(throttle -> throttle.compareTo(Held.EIGHTH) <= 0)
          .toList();

  private final SetupSheet sheet;
  private final RiskModel riskModel;
  private final Choices choices;

  FeltFirst(SetupSheet sheet, RiskModel riskModel, Choices choices) {
    this.sheet = sheet;
    this.riskModel = riskModel;
    this.choices = choices;
  }

  /**
   * The setting with other parts for small openings that is the richest on which the engine runs at
   * idle and an eighth; empty where none is safe from 3/16 up.
   */
  Optional<AssessedSetting> from(Setting safe) {
    return Stream.of(safe)
        .flatMap(with(choices.needleJets(), Setting::withNeedleJet))
        .flatMap(with(choices.cutaways(), Setting::withCutaway))
        .flatMap(FeltFirst::hung)
        .flatMap(to -> idling(to).stream())
        .sorted(comparingDouble(this::leanestSmall))
        .limit(LOOKED_AT)
        .flatMap(this::withBiggerMains)
        .filter(this::runs)
        .map(to -> AssessedSetting.of(with(to), riskModel))
        .filter(FeltFirst::isSafeAbove)
        .findFirst();
  }

  /** With the pilot jet and the turns of the screw on which it idles, and no leaner than that. */
  private Optional<Setting> idling(Setting setting) {
    return Stream.of(setting)
        .flatMap(with(choices.pilotJets(), Setting::withPilotJet))
        .flatMap(this::turned)
        .filter(this::runs)
        .min(comparingDouble(to -> lambda(to, ThrottleOpening.CLOSED)));
  }

  /** What the parts for small openings take from full throttle, the main jet gives back. */
  private Stream<Setting> withBiggerMains(Setting setting) {
    return choices.mainJets().stream()
        .map(Choice::part)
        .filter(jet -> jet.compareTo(setting.mainJet()) >= 0)
        .sorted()
        .limit(MAINS)
        .map(setting::withMainJet);
  }

  /** In its own groove and in those beside it. */
  private static Stream<Setting> hung(Setting setting) {
    return Stream.of(
            Optional.of(setting.clip()),
            setting.clip().nextTowardsTop(),
            setting.clip().nextTowardsBottom())
        .flatMap(Optional::stream)
        .map(setting::withClip);
  }

  private Stream<Setting> turned(Setting setting) {
    return choices.screws().stream()
        .map(turns -> setting.withScrew(new Screw(setting.screw().kind(), turns)));
  }

  private static <P> Function<Setting, Stream<Setting>> with(
      List<Choice<P>> parts, BiFunction<Setting, P, Setting> fitted) {
    return setting -> parts.stream().flatMap(part -> fits(setting, part.part(), fitted));
  }

  private static <P> Stream<Setting> fits(
      Setting setting, P part, BiFunction<Setting, P, Setting> fitted) {
    try {
      return Stream.of(fitted.apply(setting, part));
    } catch (IllegalArgumentException e) {
      return Stream.empty(); // a needle that does not go into the needle jet
    }
  }

  private SetupSheet with(Setting setting) {
    return sheet.withSetup(sheet.setup().withSetting(setting));
  }

  /** Not too rich to run at idle and an eighth, and on the rich side of what is wanted. */
  private boolean runs(Setting setting) {
    MixtureModel model = MixtureModel.of(sheet.setup().withSetting(setting));
    var need = sheet.setup().engine().need();
    return FELT.stream()
        .allMatch(
            held -> {
              double lambda = model.at(held).lambda().value();
              double rich = riskModel.limits().rich(held, need).value();
              return lambda >= rich && lambda <= need.at(held).value();
            });
  }

  private double lambda(Setting setting, ThrottleOpening held) {
    return MixtureModel.of(sheet.setup().withSetting(setting)).at(held).lambda().value();
  }

  /** The leanest λ up to an eighth, by what is wanted there. */
  private double leanestSmall(Setting setting) {
    MixtureModel model = MixtureModel.of(sheet.setup().withSetting(setting));
    var need = sheet.setup().engine().need();
    return BELOW.stream()
        .mapToDouble(at -> model.at(at).lambda().value() / need.at(at).value())
        .max()
        .orElseThrow();
  }

  private static boolean isSafeAbove(AssessedSetting assessed) {
    double limit = assessed.riskModel().limits().overrun(assessed.setup().engine().need()).value();
    if (assessed.overrun().lambda().value() > limit) {
      return false;
    }
    Probability accepted = assessed.sheet().riding().acceptedRisk();
    return Stream.of(assessed.profile(), assessed.coldest(), assessed.hottest())
        .map(RiskProfile::points)
        .flatMap(List::stream)
        .filter(point -> point.mixture().throttle().compareTo(FROM_HERE_SAFE) >= 0)
        .noneMatch(point -> point.riddenRisk().isMoreThan(accepted));
  }
}
