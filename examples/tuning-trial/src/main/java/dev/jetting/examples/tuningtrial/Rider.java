package dev.jetting.examples.tuningtrial;

import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Meaning;
import dev.jetting.rules.tuning.Meanings;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.Symptom;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Optional;

/** Who reads an engine: with what, and how well. */
final class Rider {

  /**
   * How well.
   *
   * @param heavyTails whether errors have heavier tails than the library reckons with
   * @param bias standard deviation of how much darker than others he calls every plug, in ln λ
   * @param wrongSensor probability that the sensor is far off, by a tenth or so
   * @param wrongColour probability that he takes a colour for its neighbour
   * @param feels whether he tells what he feels at small throttle
   * @param wrongSymptom probability that he tells a symptom picked at random
   */
  record Skill(
      boolean heavyTails,
      double bias,
      double wrongSensor,
      double wrongColour,
      boolean feels,
      double wrongSymptom) {

    /** Just as the library reckons. */
    static final Skill AS_ASSUMED = new Skill(false, 0, 0, 0, false, 0);

    /** As people are (invented). */
    static final Skill HUMAN = new Skill(true, 0.03, 0.03, 0.05, true, 0.10);
  }

  private static final double SENSOR = 0.02;
  private static final double WRONG_SENSOR = 0.10;
  private static final double PLUG = 0.07;
  private static final double FEELING = 0.08;

  private final Instrument instrument;
  private final Skill skill;
  private final Chance chance;
  private final double bias;

  Rider(Instrument instrument, Skill skill, long seed) {
    this.instrument = instrument;
    this.skill = skill;
    chance = Chance.of(seed, "rider");
    bias = chance.normal(skill.bias);
  }

  Instrument instrument() {
    return instrument;
  }

  /** What he reads where the mixture is so much leaner than needed. */
  Evidence read(ThrottleOpening throttle, double lnLambda, double lnNeeded) {
    if (instrument == Instrument.WIDEBAND) {
      double wrong = chance.happens(skill.wrongSensor) ? chance.normal(WRONG_SENSOR) : 0;
      return new Evidence.Wideband(Lambda.of(StrictMath.exp(lnLambda + error(SENSOR) + wrong)));
    }
    double leaner = lnLambda - lnNeeded;
    if (skill.feels && throttle.compareTo(ThrottleOpening.ofEighths(1)) <= 0) {
      Optional<Symptom> symptom = felt(throttle, leaner);
      if (symptom.isPresent()) {
        return new Evidence.Felt(symptom.get());
      }
    }
    return new Evidence.Colour(colour(leaner));
  }

  /** The colour of the plug, for those who go by nothing else. */
  PlugColour colour(double leaner) {
    double lambda = StrictMath.exp(leaner + bias + error(PLUG));
    PlugColour seen = PlugColour.BLACK;
    for (PlugColour colour : PlugColour.values()) {
      Meaning meaning = Meanings.assumed().colours().get(colour);
      if (meaning != null && lambda >= meaning.from()) {
        seen = colour;
        break;
      }
    }
    if (!chance.happens(skill.wrongColour)) {
      return seen;
    }
    List<PlugColour> colours = List.of(PlugColour.values());
    int neighbour = colours.indexOf(seen) + (chance.happens(0.5) ? 1 : -1);
    return colours.get(Math.max(0, Math.min(colours.size() - 1, neighbour)));
  }

  private Optional<Symptom> felt(ThrottleOpening throttle, double leaner) {
    if (chance.happens(skill.wrongSymptom)) {
      return Optional.of(List.of(Symptom.values()).get(chance.below(Symptom.values().length)));
    }
    Symptom lean = throttle.equals(ThrottleOpening.CLOSED) ? Symptom.HANGS : Symptom.HESITATES;
    double lambda = StrictMath.exp(leaner + error(FEELING));
    if (lambda >= from(lean)) {
      return Optional.of(lean);
    }
    Meaning rich = Meanings.assumed().symptoms().get(Symptom.FOUR_STROKES);
    return rich != null && lambda <= rich.to()
        ? Optional.of(Symptom.FOUR_STROKES)
        : Optional.empty();
  }

  private static double from(Symptom symptom) {
    Meaning meaning = Meanings.assumed().symptoms().get(symptom);
    return meaning == null ? Double.POSITIVE_INFINITY : meaning.from();
  }

  private double error(double deviation) {
    return skill.heavyTails ? chance.heavy(deviation) : chance.normal(deviation);
  }
}
