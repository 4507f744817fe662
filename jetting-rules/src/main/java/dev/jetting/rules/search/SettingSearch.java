package dev.jetting.rules.search;

import com.google.common.base.Suppliers;
import dev.jetting.core.calibration.AirCase;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Probability;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.number.Decimals;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A search over every combination of the choices for an engine and its riding: exact, not sampled.
 *
 * <p>A bound excludes most settings without computing them. The others are computed as in {@link
 * dev.jetting.rules.AssessedSetting}: for an engine that nobody has measured, or for one with a
 * proven setup ({@link AssessedSetting#known}). With a proven setup every setting is computed,
 * which takes some ten times as long. The result is the same on any number of threads. Where values
 * of the machine are typical, their spread is that at the sheet's own setting; an assessment of a
 * found setting takes it there, and may differ by a little.
 *
 * <p>The answer is as good as the model and the spreads: ride it in from the rich side all the
 * same. Not for an engine in a tuning session; {@link dev.jetting.rules.tuning.NextChange} uses its
 * readings.
 */
public final class SettingSearch {

  /** Of settings on a front that are not right: assumed, what nobody would choose. */
  private static final double HIGHEST_RISK = 0.25;

  /** The most parts without a price that an error names. */
  private static final int MOST_NAMED = 3;

  private final SetupSheet sheet;
  private final Choices choices;
  private final RiskModel riskModel;
  private final Calibration known;
  private final OptionalInt mostNewParts;
  private final Optional<BigDecimal> highestPrice;
  private final double share;

  private SettingSearch(
      SetupSheet sheet,
      Choices choices,
      RiskModel riskModel,
      double share,
      OptionalInt mostNewParts,
      Optional<BigDecimal> highestPrice) {
    this.share = share;
    this.sheet = Objects.requireNonNull(sheet, "sheet");
    this.choices = Objects.requireNonNull(choices, "choices");
    this.riskModel = sheet.riskModel(riskModel);
    known = AssessedSetting.known(sheet, riskModel);
    this.mostNewParts = mostNewParts;
    this.highestPrice = highestPrice;
  }

  /**
   * A search over all combinations. To keep a part as it is, keep it in the choices: {@link
   * Choices#keeping}.
   *
   * @param sheet engine, carburettor, air, fuel and riding; of the setting only what cannot be
   *     chosen counts: intake, idle lift, floats, kind of screw
   * @param choices the parts to choose among
   * @param riskModel limits, spreads and steps
   * @return the search
   */
  public static SettingSearch of(SetupSheet sheet, Choices choices, RiskModel riskModel) {
    return new SettingSearch(
        sheet, choices, riskModel, Riding.SHARE_FOR_UNREAD, OptionalInt.empty(), Optional.empty());
  }

  /**
   * Returns this search for an engine that was read, or with a larger reserve. Without it a search
   * spends {@link Riding#SHARE_FOR_UNREAD} of the accepted risk, as a starting setting does.
   *
   * @param shareOfAccepted the share of the accepted risk above which a setting counts as too lean,
   *     more than 0, at most 1
   * @return the changed search
   * @throws IllegalArgumentException if the share is out of range
   */
  public SettingSearch spending(double shareOfAccepted) {
    if (!(shareOfAccepted > 0 && shareOfAccepted <= 1)) {
      throw new IllegalArgumentException(
          "share of the accepted risk to spend "
              + (Double.isFinite(shareOfAccepted)
                  ? Decimals.shortest(shareOfAccepted)
                  : "not finite")
              + ": allowed more than 0, at most 1");
    }
    return new SettingSearch(
        sheet, choices, riskModel, shareOfAccepted, mostNewParts, highestPrice);
  }

  /** {@return the lean risk above which a setting counts as too lean} */
  public Probability spendable() {
    return Probability.of(sheet.riding().acceptedRisk().value() * share);
  }

  /**
   * This search with a limit on the number of new parts.
   *
   * @param parts the most parts that are not owned, 0 or more
   * @return the changed search
   * @throws IllegalArgumentException if the number is below zero
   */
  public SettingSearch buyingAtMost(int parts) {
    if (parts < 0) {
      throw new IllegalArgumentException("most new parts " + parts + ": allowed 0 or more");
    }
    return new SettingSearch(sheet, choices, riskModel, share, OptionalInt.of(parts), highestPrice);
  }

  /**
   * This search with new parts of at most a price together.
   *
   * @param price the highest price, zero or more, in the currency of the choices
   * @return the changed search
   * @throws IllegalArgumentException if the price is below zero or a part to buy has no price
   */
  public SettingSearch payingAtMost(BigDecimal price) {
    if (price.signum() < 0) {
      throw new IllegalArgumentException(
          "highest price " + price.toPlainString() + ": allowed 0 or more");
    }
    checkPriced("a highest price");
    return new SettingSearch(sheet, choices, riskModel, share, mostNewParts, Optional.of(price));
  }

  private void checkPriced(String why) {
    List<String> unpriced = unpriced();
    if (!unpriced.isEmpty()) {
      int more = unpriced.size() - MOST_NAMED;
      throw new IllegalArgumentException(
          "choices with "
              + why
              + ": allowed only where every part to buy has a price; without one: "
              + String.join(", ", unpriced.subList(0, Math.min(MOST_NAMED, unpriced.size())))
              + (more > 0 ? " and " + more + " more" : ""));
    }
  }

  private List<String> unpriced() {
    return Stream.of(
            unpriced(choices.pilotJets(), TradeStyle::pilot),
            unpriced(choices.cutaways(), TradeStyle::cutaway),
            unpriced(choices.needleJets(), SettingSearch::named),
            unpriced(choices.needles(), SettingSearch::named),
            unpriced(choices.mainJets(), TradeStyle::main))
        .flatMap(List::stream)
        .toList();
  }

  private static <P> List<String> unpriced(List<Choice<P>> choices, Function<P, String> name) {
    return choices.stream()
        .filter(choice -> !choice.owned() && choice.price().isEmpty())
        .map(choice -> name.apply(choice.part()))
        .toList();
  }

  private static String named(NeedleJet needleJet) {
    return "needle jet " + TradeStyle.diameter(needleJet.bore());
  }

  private static String named(NeedlePosition needle) {
    String id = needle.needle().id();
    return id.startsWith("needle ") ? id : "needle " + id;
  }

  /**
   * The best settings. Right ones come before those that are too rich somewhere, these before those
   * that are too lean. Among the too lean the least lean risk goes first. All are then ordered by
   * the least distance from what the engine needs, then by the fewest new parts. The lowest price
   * follows, if every part to buy has one, and then the order of the parts in the choices.
   *
   * @param count how many, 1 to 10 000
   * @param run on which threads, until when
   * @return the settings, the best first; fewer if fewer exist
   * @throws IllegalArgumentException if the count is out of range, or the air of a day is colder
   *     than −40 °C and the fuel is a blend
   */
  public Found best(int count, Run run) {
    if (count < 1 || count > 10_000) {
      throw new IllegalArgumentException("number of settings " + count + ": allowed 1 to 10000");
    }
    double accepted = spendable().value();
    return search(() -> new BestCollector(count, accepted), BestCollector::kept, run).found;
  }

  /**
   * The Pareto front of the right settings in lean risk, distance from what the engine needs, and
   * cost. Settings that are too rich or too lean are left out, however cheap. To see what there is
   * for less, search with less to buy.
   *
   * <p>If no setting is right, the front contains settings that are too rich or too lean. It then
   * leaves out a lean risk above a quarter, unless the rider accepts more, and settings that are
   * too lean on the overrun. Of settings equal in all three, it has the first in the order of the
   * parts.
   *
   * @param cost what counts as cost
   * @param run on which threads, until when
   * @return the settings by rising distance, either all of them right or none
   * @throws IllegalArgumentException if the price is the cost and a part to buy has none, or the
   *     air of a day is colder than −40 °C and the fuel is a blend
   */
  public Found front(Cost cost, Run run) {
    if (cost == Cost.PRICE) {
      checkPriced("the price as cost");
    }
    double accepted = spendable().value();
    double highest = Math.max(HIGHEST_RISK, accepted);
    return search(() -> new ParetoCollector(accepted, highest, cost), ParetoCollector::kept, run)
        .found;
  }

  /**
   * The risk model for an assessment of a found setting that gives the same risk as this search. It
   * has the uncertainties of the choices' jets and of the typical values of the searched sheet.
   *
   * @param pick which of the choices it is made of
   * @return the risk model
   * @throws IndexOutOfBoundsException if there are no such choices
   */
  public RiskModel riskModel(ChoiceIndices pick) {
    return riskModel(
        choices.pilotJets().get(pick.pilotJet()), choices.mainJets().get(pick.mainJet()));
  }

  private RiskModel riskModel(Choice<JetBore> pilot, Choice<JetBore> main) {
    return riskModel.widerByPilotJet(pilot.uncertainty()).widerByMainJet(main.uncertainty());
  }

  /** What was found, and how many settings were worked out to find it. */
  record Searched(Found found, long workedOut) {}

  /** What a keeper has kept. */
  @FunctionalInterface
  interface Kept<K> {
    List<SettingCandidate> of(K keeper);
  }

  <K extends SettingCollector> Searched search(Supplier<K> keepers, Kept<K> kept, Run run) {
    Costs costs = Costs.of(choices);
    SearchLimits limits = new SearchLimits(sheet, riskModel, spendable(), known);
    List<Double> airCases = limits.airCases.stream().map(AirCase::z).toList();
    Space space =
        new Space(
            sheet, choices, setup -> MixtureTable.of(setup, AssessedSetting.openings(), airCases));
    Sweep.Bounds bounds =
        new Sweep.Bounds(
            mostNewParts.orElse(Integer.MAX_VALUE),
            highestPrice.map(costs::atMost).orElse(Long.MAX_VALUE),
            costs.of(choices.pilotJets()),
            costs.of(choices.cutaways()),
            costs.of(choices.needleJets()),
            costs.of(choices.needles()),
            costs.of(choices.mainJets()));
    ModelUncertainty[][] parts = parts();
    Work work = new Work(run, choices.combinations());
    space.fill(work);
    List<K> all = new ArrayList<>();
    List<Sweeping> sweeps = new ArrayList<>();
    Supplier<KnownOverrun> overrun =
        Suppliers.memoize(() -> new KnownOverrun(sheet, space, limits.overrun, known));
    work.pieces(
        space.slides() * choices.needleJets().size(),
        worker -> {
          K keeper = keepers.get();
          Sweeping sweep =
              known.readings().isEmpty()
                  ? new Sweep(space, limits, parts, bounds, keeper, work)
                  : new KnownSweep(space, limits, parts, bounds, overrun.get(), keeper, work);
          all.add(keeper);
          sweeps.add(sweep);
          return sweep::piece;
        });
    K merged = keepers.get();
    all.forEach(keeper -> kept.of(keeper).forEach(merged::offer));
    List<FoundSetting> settings =
        kept.of(merged).stream().map(candidate -> found(space, candidate)).toList();
    return new Searched(
        new Found(settings, choices.combinations(), space.impossible(), work.ending()),
        sweeps.stream().mapToLong(Sweeping::workedOut).sum());
  }

  private ModelUncertainty[][] parts() {
    return choices.pilotJets().stream()
        .map(
            pilot ->
                choices.mainJets().stream()
                    .map(main -> riskModel(pilot, main).uncertainty())
                    .toArray(ModelUncertainty[]::new))
        .toArray(ModelUncertainty[][]::new);
  }

  private FoundSetting found(Space space, SettingCandidate candidate) {
    ChoiceIndices pick = candidate.pick();
    return new FoundSetting(
        space.setting(pick),
        pick,
        candidate.standing(),
        Probability.of(candidate.leanRisk()),
        candidate.distance(),
        newParts(pick));
  }

  private List<NewPart> newParts(ChoiceIndices pick) {
    List<NewPart> parts = new ArrayList<>();
    Choice<NeedlePosition> needle = choices.needles().get(pick.needle());
    var pilotJet = choices.pilotJets().get(pick.pilotJet());
    var cutaway = choices.cutaways().get(pick.cutaway());
    var needleJet = choices.needleJets().get(pick.needleJet());
    var mainJet = choices.mainJets().get(pick.mainJet());
    add(parts, PartKind.PILOT_JET, pilotJet, TradeStyle.pilot(pilotJet.part()));
    add(parts, PartKind.SLIDE, cutaway, TradeStyle.cutaway(cutaway.part()));
    add(parts, PartKind.NEEDLE_JET, needleJet, named(needleJet.part()));
    add(parts, PartKind.NEEDLE, needle, named(needle.part()));
    add(parts, PartKind.MAIN_JET, mainJet, TradeStyle.main(mainJet.part()));
    return parts;
  }

  private static void add(List<NewPart> parts, PartKind kind, Choice<?> choice, String what) {
    if (!choice.owned()) {
      parts.add(new NewPart(kind, what, choice.price()));
    }
  }
}
