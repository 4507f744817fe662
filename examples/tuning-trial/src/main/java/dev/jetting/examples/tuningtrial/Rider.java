package dev.jetting.examples.tuningtrial;

import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.IdleAnswer;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Meaning;
import dev.jetting.rules.tuning.Meanings;
import dev.jetting.rules.tuning.NextTest;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.RunDown;
import dev.jetting.rules.tuning.Symptom;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/** Who reads an engine: with what, and how well. */
final class Rider {

  /**
   * How well.
   *
   * @param heavyTails whether errors have heavier tails than the library assumes
   * @param bias standard deviation of how much darker than others he calls every plug, in ln λ
   * @param wrongSensor probability that the sensor is far off, by a tenth or so
   * @param wrongColour probability that he takes a colour for its neighbour
   * @param feels whether he reports what he feels at small throttle
   * @param wrongSymptom probability that he reports a symptom picked at random
   * @param sensorOff by what share the sensor shows every λ too lean or too rich
   * @param blind whether he always takes one colour for its neighbour
   */
  record Skill(
      boolean heavyTails,
      double bias,
      double wrongSensor,
      double wrongColour,
      boolean feels,
      double wrongSymptom,
      double sensorOff,
      boolean blind) {

    /** Just as the library assumes. */
    static final Skill AS_ASSUMED = new Skill(false, 0, 0, 0, false, 0, 0, false);

    /** As people are (invented). */
    static final Skill HUMAN = new Skill(true, 0.03, 0.03, 0.05, true, 0.10, 0, false);

    Skill withSensorOff(double share) {
      return new Skill(
          heavyTails, bias, wrongSensor, wrongColour, feels, wrongSymptom, share, blind);
    }

    Skill blindToAColour() {
      return new Skill(
          heavyTails, bias, wrongSensor, wrongColour, feels, wrongSymptom, sensorOff, true);
    }
  }

  private static final double SENSOR = 0.02;
  private static final double WRONG_SENSOR = 0.10;
  private static final double PLUG = 0.07;
  private static final double FEELING = 0.10;
  private static final double POPPING = 0.10;
  private static final double DYING = -0.60;

  /** Riders who turn the screw and say what it did, and who hear an idle that races (invented). */
  private static final double TRIES_THE_SCREW = 0.7;

  /** Standard deviation of how well the best idle is found, in ln λ (invented). */
  private static final double SCREW = 0.08;

  /** Within this much in ln λ an idle is best (invented). */
  private static final double BEST = StrictMath.log(1.07);

  /** Standard deviation of how well it is heard how fast an idle is, in ln of the air. */
  private static final double HEARING = 0.10;

  /** From this much more air on, in ln of the air, an idle races with the slide shut (invented). */
  private static final double RACING = 0.25;

  private final Instrument instrument;
  private final Skill skill;
  private final Chance chance;
  private final double bias;
  private final double sensor;
  private final PlugColour unseen;
  private final PlugColour seenInstead;
  private final boolean triesTheScrew;
  private final Chance atIdle;

  Rider(Instrument instrument, Skill skill, long seed) {
    this.instrument = instrument;
    this.skill = skill;
    chance = Chance.of(seed, "rider");
    bias = chance.normal(skill.bias);
    Chance own = Chance.of(seed, "senses");
    sensor = StrictMath.log1p(own.happens(0.5) ? skill.sensorOff : -skill.sensorOff);
    List<PlugColour> colours = List.of(PlugColour.values());
    int colour = 1 + own.below(colours.size() - 2);
    unseen = colours.get(colour);
    seenInstead = colours.get(colour + (own.happens(0.5) ? 1 : -1));
    triesTheScrew = own.happens(TRIES_THE_SCREW);
    atIdle = Chance.of(seed, "idle");
  }

  Instrument instrument() {
    return instrument;
  }

  /** What he reads where the mixture is so much leaner than needed. */
  Evidence read(NextTest test, double lnLambda, double lnNeeded) {
    double leaner = lnLambda - lnNeeded;
    if (test.kind() == NextTest.Kind.RUN_DOWN) {
      return new Evidence.Overrun(runDown(leaner));
    }
    return switch (test.instrument()) {
      case WIDEBAND, EXHAUST_THERMOMETER -> wideband(lnLambda);
      case FEEL -> new Evidence.Felt(felt(test.throttle(), leaner));
      case PLUG -> new Evidence.Colour(colour(leaner));
    };
  }

  /**
   * What the idle answers to the screw, for riders who read with nothing better.
   *
   * @param seen what he felt before he turned the screw
   * @param leaner by how much leaner than needed in ln λ
   * @param leanerAtRichEnd the same with the screw at the rich end of its range
   * @param leanerAtLeanEnd the same with the screw at its lean end
   * @return the answer, or what he felt where he does not try, or the idle is plainly rich
   */
  Evidence idle(Evidence seen, double leaner, double leanerAtRichEnd, double leanerAtLeanEnd) {
    double off = atIdle(SCREW);
    if (!triesTheScrew || seen.equals(new Evidence.Felt(Symptom.STUMBLES))) {
      return seen;
    }
    if (leanerAtRichEnd + off > BEST) {
      return new Evidence.Idle(IdleAnswer.BEYOND_RICH);
    }
    if (leanerAtLeanEnd + off < -BEST) {
      return new Evidence.Idle(IdleAnswer.BEYOND_LEAN);
    }
    if (Math.abs(leaner + off) <= BEST) {
      return new Evidence.Idle(IdleAnswer.BEST);
    }
    return new Evidence.Idle(
        leaner + off > 0 ? IdleAnswer.FASTER_RICHER : IdleAnswer.FASTER_LEANER);
  }

  /** Whether he says that the idle races where the engine draws so much air past the slide. */
  boolean hearsItRace(double falseAir) {
    double heard = falseAir + atIdle(HEARING);
    return triesTheScrew && heard > RACING;
  }

  private double atIdle(double deviation) {
    return skill.heavyTails ? atIdle.heavy(deviation) : atIdle.normal(deviation);
  }

  private Evidence wideband(double lnLambda) {
    double wrong = chance.happens(skill.wrongSensor) ? chance.normal(WRONG_SENSOR) : 0;
    double lambda = StrictMath.exp(lnLambda + sensor + error(SENSOR) + wrong);
    return new Evidence.Wideband(Lambda.of(Math.min(Math.max(lambda, 0.4), 2)));
  }

  /** On the overrun (invented), by the leanest mixture that does no harm there. */
  private RunDown runDown(double leaner) {
    double felt = leaner + error(FEELING);
    if (felt > POPPING) {
      return RunDown.POPS;
    }
    return felt < DYING ? RunDown.DIES : RunDown.CLEAN;
  }

  /** The colour of the plug, for riders who look at nothing else. */
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
    if (skill.blind && seen == unseen) {
      return seenInstead;
    }
    if (!chance.happens(skill.wrongColour)) {
      return seen;
    }
    List<PlugColour> colours = List.of(PlugColour.values());
    int neighbour = colours.indexOf(seen) + (chance.happens(0.5) ? 1 : -1);
    return colours.get(Math.max(0, Math.min(colours.size() - 1, neighbour)));
  }

  private Symptom felt(ThrottleOpening throttle, double leaner) {
    if (skill.feels && chance.happens(skill.wrongSymptom)) {
      return MILD.get(chance.below(MILD.size()));
    }
    double lambda = StrictMath.exp(leaner + error(FEELING));
    Meaning clean = Meanings.assumed().symptoms().get(Symptom.CLEAN);
    if (clean == null || (lambda >= clean.from() && lambda <= clean.to())) {
      return Symptom.CLEAN;
    }
    boolean idle = throttle.equals(ThrottleOpening.CLOSED);
    if (lambda > clean.to()) {
      return idle ? Symptom.HANGS : Symptom.HESITATES;
    }
    return Symptom.STUMBLES;
  }

  /** What may be felt by mistake. */
  private static final List<Symptom> MILD =
      List.of(
          Symptom.CLEAN,
          Symptom.BOGS,
          Symptom.HESITATES,
          Symptom.HANGS,
          Symptom.STUMBLES,
          Symptom.CRISP);

  private double error(double deviation) {
    return skill.heavyTails ? chance.heavy(deviation) : chance.normal(deviation);
  }
}
