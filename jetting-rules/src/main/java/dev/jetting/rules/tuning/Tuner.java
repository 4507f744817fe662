package dev.jetting.rules.tuning;

import com.google.common.collect.Sets;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.Objects;
import java.util.Set;

/**
 * Leads tuning sessions: which test to ride, which part to change, and when to end. Immutable, and
 * safe for any number of threads.
 *
 * <pre>{@code
 * Tuner tuner = Tuner.readingWith(Set.of(Instrument.PLUG));
 * TuningSession session = TuningSession.beginning(sheet);
 * NextStep step = tuner.next(session);
 * }</pre>
 *
 * <p>The order and the refusals are those of the trade; the model says which part, how far, and
 * what that does to the risk. TUNING.md describes the policy. Not a promise that a setting is safe.
 */
public final class Tuner {

  private final RiskModel riskModel;
  private final Meanings meanings;
  private final Set<Instrument> instruments;
  private final Rulebook rulebook;

  private Tuner(
      RiskModel riskModel, Meanings meanings, Set<Instrument> instruments, Rulebook rulebook) {
    this.riskModel = Objects.requireNonNull(riskModel, "riskModel");
    this.meanings = Objects.requireNonNull(meanings, "meanings");
    this.rulebook = Objects.requireNonNull(rulebook, "rulebook");
    Objects.requireNonNull(instruments, "instruments");
    if (Set.of(Instrument.FEEL).containsAll(instruments)) {
      throw InvalidValueException.at(
          "instruments", instruments.toString(), Sentence.of("error.besides-feel"));
    }
    this.instruments = Sets.immutableEnumSet(instruments);
  }

  /**
   * Creates a tuner with the library's assumed risk model and meanings, and its standard rulebook.
   *
   * @param instruments what the rider reads the engine with; at least one besides feel, which every
   *     rider has and which reads no full throttle
   * @return the tuner
   * @throws IllegalArgumentException if there is none
   */
  public static Tuner readingWith(Set<Instrument> instruments) {
    return new Tuner(
        RiskModel.assumed(), Meanings.assumed(), instruments, StandardRulebook.rulebook());
  }

  /**
   * Returns this tuner with another risk model.
   *
   * @param other limits, spreads and steps
   * @return the changed tuner
   */
  public Tuner withRiskModel(RiskModel other) {
    return new Tuner(other, meanings, instruments, rulebook);
  }

  /**
   * Returns this tuner with other meanings.
   *
   * @param other what colours and symptoms mean
   * @return the changed tuner
   */
  public Tuner withMeanings(Meanings other) {
    return new Tuner(riskModel, other, instruments, rulebook);
  }

  /**
   * Returns this tuner with another rulebook. No session rides or ends on a setting in which one of
   * its rules finds a danger.
   *
   * @param other the rules, such as the standard ones with those of a shop
   * @return the changed tuner
   */
  public Tuner withRulebook(Rulebook other) {
    return new Tuner(riskModel, meanings, instruments, other);
  }

  /** {@return limits, spreads and steps} */
  public RiskModel riskModel() {
    return riskModel;
  }

  /** {@return what colours and symptoms mean} */
  public Meanings meanings() {
    return meanings;
  }

  /** {@return the rules whose dangers a session does not ride on} */
  public Rulebook rulebook() {
    return rulebook;
  }

  /** {@return what the rider reads the engine with} */
  public Set<Instrument> instruments() {
    return instruments;
  }

  /**
   * Returns the next step of a session.
   *
   * @param session the session so far
   * @return the step
   */
  public NextStep next(TuningSession session) {
    return new StepChooser(this, session).next();
  }

  /**
   * Returns what the readings of a session teach about the engine. A reading that contradicts its
   * own repetition, or disagrees with all the rest, does not count.
   *
   * @param session the session so far
   * @return the calibration
   */
  public Calibration calibration(TuningSession session) {
    return new Findings(this, session).calibration();
  }

  /**
   * Returns whether the lean risk of the session's setting is accepted on each of the days, climbs
   * included, and its overrun not too lean. Not a promise.
   *
   * @param session the session so far
   * @return true if the model and the readings accept the setting
   */
  public boolean accepts(TuningSession session) {
    return new ChangeChooser(session.now(), riskModel, calibration(session)).accepts();
  }

  /**
   * Assesses the session's setting with everything that was read.
   *
   * @param session the session so far
   * @return the assessed setting
   */
  public AssessedSetting assess(TuningSession session) {
    return AssessedSetting.of(session.now(), riskModel, calibration(session));
  }

  /**
   * Returns a setting to start with on an engine that nobody has measured.
   *
   * @param sheet the machine with any setting of its carburettor, the riding, and the parts at hand
   * @return the setting
   */
  public StartingSetting start(SetupSheet sheet) {
    return StartFinder.find(sheet, riskModel);
  }

  /**
   * Moves a finished setting to another day, another place or another fuel. It becomes as rich
   * there as it was where it was finished, at full throttle, half and idle, as far as main jet,
   * needle and pilot circuit reach. It becomes safer where that is not enough. Where no parts at
   * hand make it safe, it says so and goes no further than that.
   *
   * <p>In other air it is judged on that day alone, because the coldest and hottest day of the
   * sheet belong to the place it came from. With another fuel in the same air it is judged on all
   * days of the sheet.
   *
   * @param sheet the finished setting, the riding and the parts at hand
   * @param there the same setup in the other air, or with the other fuel
   * @param calibration what is known of the engine
   * @return the setting there; not safe where no parts at hand make it so
   */
  public MovedSetting move(SetupSheet sheet, Setup there, Calibration calibration) {
    return SettingMover.move(sheet, there, riskModel, calibration);
  }
}
