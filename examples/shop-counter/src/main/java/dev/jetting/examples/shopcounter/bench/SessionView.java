package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.mixture.Setup;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.rules.tuning.SessionText;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.rules.tuning.TuningStep;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * A tuning session as its page shows it.
 *
 * @param machine the machine
 * @param with what the rider reads with
 * @param step what to do next
 * @param bands how the band has narrowed
 * @param history what was tried and seen, in order
 */
public record SessionView(
    Machine machine, ReadWith with, StepView step, List<Band> bands, List<Tried> history) {

  /**
   * The band at an opening.
   *
   * @param where the opening
   * @param before the band before anything was read
   * @param now the band now
   * @param narrower by how much narrower it is, percent
   * @param risk the lean risk now
   */
  public record Band(String where, String before, String now, int narrower, String risk) {}

  /**
   * A setting that was tried.
   *
   * @param number its number
   * @param setting the parts, for people
   * @param air the air
   * @param seen what was seen on it
   */
  public record Tried(int number, String setting, String air, List<String> seen) {}

  /** {@return the openings to choose from, among them that of the next test} */
  public List<String> openings() {
    List<String> openings = new ArrayList<>(bands.stream().map(Band::where).toList());
    if (!step.at().isEmpty() && !openings.contains(step.at())) {
      openings.add(step.at());
    }
    return openings;
  }

  /**
   * Works the page out.
   *
   * @param machine the machine
   * @param with what the rider reads with
   * @return the page
   */
  public static SessionView of(Machine machine, ReadWith with) {
    Tuner tuner = tuner(with);
    TuningSession session = machine.session();
    return new SessionView(
        machine, with, StepView.of(tuner.next(session)), bands(machine, tuner), history(session));
  }

  /**
   * Returns a machine's session in the library's own words.
   *
   * @param machine the machine
   * @param with what the rider reads with
   * @return the text
   */
  public static String words(Machine machine, ReadWith with) {
    return SessionText.of(machine.session(), tuner(with));
  }

  /**
   * Returns the next step of a machine's session.
   *
   * @param machine the machine
   * @param with what the rider reads with
   * @return the step
   */
  public static NextStep next(Machine machine, ReadWith with) {
    return tuner(with).next(machine.session());
  }

  private static Tuner tuner(ReadWith with) {
    return Tuner.readingWith(with.instruments());
  }

  private static List<Band> bands(Machine machine, Tuner tuner) {
    List<ThrottleOpening> openings =
        IntStream.rangeClosed(0, 8).mapToObj(ThrottleOpening::ofEighths).toList();
    AssessedSetting now = tuner.assess(machine.session());
    RiskProfile untried = AssessedSetting.of(now.sheet(), tuner.riskModel()).profile();
    List<Band> bands = new ArrayList<>();
    for (ThrottleOpening opening : openings) {
      RiskPoint before = untried.nearest(opening);
      RiskPoint after = now.profile().nearest(opening);
      bands.add(
          new Band(
              TradeStyle.throttle(opening).replace(" throttle", ""),
              band(before),
              band(after),
              (int) Math.round(100 * (1 - after.spread() / before.spread())),
              TradeStyle.probability(after.leanRisk(), machine.sheet().riding().acceptedRisk())));
    }
    return bands;
  }

  private static String band(RiskPoint point) {
    return String.format(Locale.ROOT, "%.2f to %.2f", point.richEnd(), point.leanEnd());
  }

  private static List<Tried> history(TuningSession session) {
    List<Tried> history = new ArrayList<>();
    for (TuningStep step : session.steps()) {
      history.add(
          new Tried(
              history.size() + 1,
              setting(step.setup()),
              TradeStyle.temperature(step.setup().air().temperature())
                  + ", "
                  + TradeStyle.pressure(step.setup().air().pressure()),
              step.observations().stream().map(Observation::text).toList()));
    }
    return history;
  }

  private static String setting(Setup setup) {
    List<String> parts = new ArrayList<>();
    for (Dial dial : Dial.all()) {
      parts.add(dial.label().toLowerCase(Locale.ROOT) + " " + dial.text(setup.setting()));
    }
    return String.join(", ", parts);
  }
}
