package dev.jetting.rules.search;

import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The plain way: every combination assessed one by one, then sorted. No bounds, no tables. */
final class Plain {

  /** A setting with the numbers of its assessment. */
  record Weighed(
      ChoiceIndices pick,
      Standing standing,
      double leanRisk,
      double distance,
      int newParts,
      Optional<BigDecimal> price) {

    static Weighed of(FoundSetting found) {
      return new Weighed(
          found.pick(),
          found.standing(),
          found.leanRisk().value(),
          found.distance(),
          found.newParts().size(),
          found.price());
    }
  }

  private final SetupSheet sheet;
  private final Choices choices;
  private final RiskModel riskModel;

  Plain(SetupSheet sheet, Choices choices, RiskModel riskModel) {
    this.sheet = sheet;
    this.choices = choices;
    this.riskModel = riskModel;
  }

  /** All settings that can be put together, in part order. */
  List<Weighed> all() {
    List<Weighed> all = new ArrayList<>();
    for (int pilot = 0; pilot < choices.pilotJets().size(); pilot++) {
      for (int screw = 0; screw < choices.screws().size(); screw++) {
        for (int slide = 0; slide < choices.cutaways().size(); slide++) {
          for (int jet = 0; jet < choices.needleJets().size(); jet++) {
            for (int needle = 0; needle < choices.needles().size(); needle++) {
              int clips = choices.needles().get(needle).part().clips().size();
              for (int clip = 0; clip < clips; clip++) {
                for (int main = 0; main < choices.mainJets().size(); main++) {
                  weigh(new ChoiceIndices(pilot, screw, slide, jet, needle, clip, main))
                      .ifPresent(all::add);
                }
              }
            }
          }
        }
      }
    }
    return all;
  }

  private Optional<Weighed> weigh(ChoiceIndices pick) {
    Setting setting;
    try {
      setting =
          new Space(
                  sheet,
                  choices,
                  setup -> MixtureTable.of(setup, AssessedSetting.openings(), Map.of()))
              .setting(pick);
    } catch (IllegalArgumentException cannotBePutTogether) {
      return Optional.empty();
    }
    RiskModel its =
        riskModel
            .widerByPilotJet(choices.pilotJets().get(pick.pilotJet()).uncertainty())
            .widerByMainJet(choices.mainJets().get(pick.mainJet()).uncertainty());
    AssessedSetting assessed =
        AssessedSetting.of(sheet.withSetup(sheet.setup().withSetting(setting)), its);
    double risk =
        Stream.of(assessed.profile(), assessed.coldest(), assessed.hottest())
            .mapToDouble(profile -> profile.worst().leanRisk().value())
            .max()
            .orElseThrow();
    var need = sheet.setup().engine().need();
    boolean overrun = assessed.overrun().lambda().compareTo(riskModel.limits().overrun(need)) > 0;
    RiskProfile today = assessed.profile();
    boolean rich = today.points().stream().anyMatch(p -> p.lambda().compareTo(p.richLimit()) < 0);
    Standing standing =
        risk > sheet.riding().acceptedRisk().value() || overrun
            ? Standing.TOO_LEAN
            : rich ? Standing.TOO_RICH : Standing.RIGHT;
    List<Choice<?>> chosen =
        List.of(
            choices.pilotJets().get(pick.pilotJet()),
            choices.cutaways().get(pick.cutaway()),
            choices.needleJets().get(pick.needleJet()),
            choices.needles().get(pick.needle()),
            choices.mainJets().get(pick.mainJet()));
    List<Choice<?>> bought = chosen.stream().filter(choice -> !choice.owned()).toList();
    Optional<BigDecimal> price =
        bought.stream().anyMatch(choice -> choice.price().isEmpty())
            ? Optional.empty()
            : Optional.of(
                bought.stream()
                    .map(choice -> choice.price().orElseThrow())
                    .reduce(BigDecimal.ZERO, BigDecimal::add));
    return Optional.of(
            new Weighed(
                pick,
                standing,
                risk,
                today.distance(sheet.riding().profile(), need),
                bought.size(),
                price)) //
        .map(w -> leanOnOverrunOnly(w, overrun));
  }

  private final List<ChoiceIndices> leanOverrun = new ArrayList<>();

  private Weighed leanOnOverrunOnly(Weighed weighed, boolean overrun) {
    if (overrun) {
      leanOverrun.add(weighed.pick());
    }
    return weighed;
  }

  /** The best first; all of one order, so the sort is stable in part order. */
  static List<Weighed> best(List<Weighed> all, int count) {
    return all.stream()
        .sorted(
            Comparator.comparing(Weighed::standing)
                .thenComparing(w -> w.standing() == Standing.TOO_LEAN ? w.leanRisk() : 0.0)
                .thenComparing(Weighed::distance)
                .thenComparing(Weighed::newParts)
                .thenComparing(w -> w.price().orElse(BigDecimal.ZERO)))
        .limit(count)
        .toList();
  }

  /** The front by new parts, by rising distance: of the right ones, or of all where none is. */
  List<Weighed> front(List<Weighed> all) {
    return front(all, w -> BigDecimal.valueOf(w.newParts()));
  }

  /** The front by a cost. */
  List<Weighed> front(List<Weighed> all, Function<Weighed, BigDecimal> cost) {
    List<Weighed> right = all.stream().filter(w -> w.standing() == Standing.RIGHT).toList();
    return unbeaten(right.isEmpty() ? worthShowing(all) : right, cost);
  }

  private List<Weighed> worthShowing(List<Weighed> all) {
    return all.stream()
        .filter(
            w ->
                w.leanRisk() <= Math.max(0.25, sheet.riding().acceptedRisk().value())
                    && !leanOverrun.contains(w.pick()))
        .toList();
  }

  private static List<Weighed> unbeaten(List<Weighed> fit, Function<Weighed, BigDecimal> cost) {
    List<Weighed> front = new ArrayList<>();
    for (int i = 0; i < fit.size(); i++) {
      Weighed w = fit.get(i);
      boolean beaten = false;
      for (int j = 0; j < fit.size() && !beaten; j++) {
        Weighed o = fit.get(j);
        boolean asGood =
            o.leanRisk() <= w.leanRisk()
                && o.distance() <= w.distance()
                && cost.apply(o).compareTo(cost.apply(w)) <= 0;
        boolean equal =
            o.leanRisk() == w.leanRisk()
                && o.distance() == w.distance()
                && cost.apply(o).compareTo(cost.apply(w)) == 0;
        beaten = asGood && (equal ? j < i : true) && j != i;
      }
      if (!beaten) {
        front.add(w);
      }
    }
    front.sort(
        Comparator.comparing(Weighed::distance)
            .thenComparing(Weighed::leanRisk)
            .thenComparing(Weighed::newParts)
            .thenComparing(w -> w.price().orElse(BigDecimal.ZERO)));
    return front;
  }
}
