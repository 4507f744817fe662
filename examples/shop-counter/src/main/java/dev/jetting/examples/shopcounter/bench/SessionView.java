package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.mixture.Setup;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.SessionText;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.rules.tuning.TuningStep;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
   * @param key the opening's name in a form
   * @param where the opening
   * @param before the band before anything was read
   * @param now the band now
   * @param narrower by how much narrower it is, percent
   * @param risk the lean risk now
   */
  public record Band(
      String key, String where, String before, String now, int narrower, String risk) {}

  /**
   * A setting that was tried.
   *
   * @param number its number
   * @param setting the parts, for people
   * @param air the air
   * @param seen what was seen on it
   */
  public record Tried(int number, String setting, String air, List<String> seen) {}

  /** {@return the openings to choose from by their names in a form, with that of the next test} */
  public Map<String, String> openings() {
    Map<String, String> openings = new LinkedHashMap<>();
    bands.forEach(band -> openings.put(band.key(), band.where()));
    if (!step.at().isEmpty()) {
      openings.putIfAbsent(step.at(), step.where());
    }
    return openings;
  }

  /**
   * Works the page out.
   *
   * @param machine the machine
   * @param with what the rider reads with
   * @param words the language
   * @return the page
   */
  public static SessionView of(Machine machine, ReadWith with, Words words) {
    Tuner tuner = tuner(with);
    TuningSession session = machine.session();
    return new SessionView(
        machine,
        with,
        StepView.of(session, tuner, words),
        bands(machine, tuner, words),
        history(session, words));
  }

  /**
   * Returns a machine's session in the library's own words.
   *
   * @param machine the machine
   * @param with what the rider reads with
   * @param words the language
   * @return the text
   */
  public static String text(Machine machine, ReadWith with, Words words) {
    return SessionText.of(machine.session(), tuner(with), words.wording());
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

  private static List<Band> bands(Machine machine, Tuner tuner, Words words) {
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
              StepView.key(opening),
              words.say(Argument.opening(opening)),
              words.say(band(before)),
              words.say(band(after)),
              (int) Math.round(100 * (1 - after.spread() / before.spread())),
              words.say(Argument.risk(after.leanRisk(), machine.sheet().riding().acceptedRisk()))));
    }
    return bands;
  }

  private static Message band(RiskPoint point) {
    return Words.message(
        "session.band",
        "rich",
        Argument.fixed(point.richEnd(), "1", 2),
        "lean",
        Argument.fixed(point.leanEnd(), "1", 2));
  }

  private static List<Tried> history(TuningSession session, Words words) {
    List<Tried> history = new ArrayList<>();
    for (TuningStep step : session.steps()) {
      history.add(
          new Tried(
              history.size() + 1,
              words.say(setting(step.setup())),
              words.say(DayLine.air(step.setup().air())),
              step.observations().stream().map(seen -> words.say(seen.message())).toList()));
    }
    return history;
  }

  private static Argument setting(Setup setup) {
    return Argument.items(Dial.all().stream().map(dial -> dial.part(setup.setting())).toList());
  }
}
