package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Disturbance;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.rules.text.Message;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A fault that no part of the setting is to blame for, as a hypothesis: what it looks like over the
 * throttle range, and which check settles it. The ranges are common practice, no source.
 */
public enum Fault {
  /**
   * False air: leanest at small openings, because the leak is as large as ever there. At a seal of
   * the crankshaft it draws at any opening. At a flange it draws by the depression behind the
   * slide, so that its share of the air falls as the slide opens.
   */
  AIR_LEAK(Check.AIR_LEAK, true, 0, 8),
  /** A blocked or wrong pilot jet or passage: lean at small openings alone. */
  PILOT_BLOCKED(Check.JETS_CLEAN, true, 0, 2),
  /** A blocked or mislabelled main jet: lean at wide openings alone. */
  MAIN_BLOCKED(Check.JETS_CLEAN, true, 5, 8),
  /** A fuel supply that does not keep up: lean at wide openings, the more the longer they last. */
  FUEL_SHORT(Check.FUEL_DELIVERY, true, 6, 8),
  /** A low float level: lean everywhere. */
  FUEL_LEVEL_LOW(Check.FUEL_LEVEL, true, 0, 8),
  /** Ignition too early: pings and burns the plug white at any mixture. */
  IGNITION_TIMING(Check.IGNITION_TIMING, true, 3, 8),
  /** A plug too hot for the engine: white at any mixture. */
  PLUG_TOO_HOT(Check.HEAT_RANGE, true, 3, 8),
  /** A plug too cold for the engine: dark at any mixture. */
  PLUG_TOO_COLD(Check.HEAT_RANGE, false, 0, 8),
  /** More oil in the premix than the sheet says: dark at any mixture, and less fuel. */
  TOO_MUCH_OIL(Check.PREMIX, false, 0, 8),
  /** A choke that is on or a cold engine: rich everywhere. */
  CHOKE_ON(Check.WARM_ENGINE, false, 0, 8),
  /** A high float level: rich everywhere. */
  FUEL_LEVEL_HIGH(Check.FUEL_LEVEL, false, 0, 8),
  /** A dirty filter or a choked exhaust: rich at wide openings. */
  BREATHING(Check.INTAKE_AND_EXHAUST, false, 4, 8),
  /** A worn needle or needle jet, or a clip that slipped: rich in the middle. */
  NEEDLE_WORN(Check.SLIDE_AND_NEEDLE, false, 1, 6),
  /** A slack cable or wrong marks: the slide is less open than the grip says, mostly rich. */
  THROTTLE_SLACK(Check.THROTTLE_MARKS, false, 1, 4);

  /** By what shares of its travel a slide with a slack cable may stay behind (assumed). */
  private static final double[] SLACK = {0.03, 0.06, 0.09};

  private final Check check;
  private final boolean lean;
  private final int fromEighths;
  private final int toEighths;

  Fault(Check check, boolean lean, int fromEighths, int toEighths) {
    this.check = check;
    this.lean = lean;
    this.fromEighths = fromEighths;
    this.toEighths = toEighths;
  }

  /** {@return the check that settles whether it is this} */
  public Check settledBy() {
    return check;
  }

  /** {@return the fault in plain words, such as {@code an air leak}} */
  public String text() {
    return message().text();
  }

  /** {@return the same for any language} */
  public Message message() {
    return Words.of("fault", this);
  }

  /** {@return whether the engine looks lean by it; rich otherwise} */
  public boolean isLean() {
    return lean;
  }

  /**
   * What the readings of a session teach if the engine has it (assumed, all of it; not measured):
   * one for each size, as likely as the others. Empty where it changes what a plug looks like and
   * not the mixture, or where it is seen at once.
   */
  List<Calibration> on(Calibration sound) {
    return switch (this) {
      case AIR_LEAK ->
          Stream.of(
                  disturbed(sound, ThrottleOpening.CLOSED, 0.35, 0.18, 0.08),
                  disturbed(sound, ThrottleOpening.CLOSED, 0.08, 0.30, 0.12))
              .flatMap(List::stream)
              .toList();
      case PILOT_BLOCKED -> disturbed(sound, ThrottleOpening.CLOSED, 0.10, 0.28, 0.10);
      case MAIN_BLOCKED -> disturbed(sound, ThrottleOpening.FULL, 0.35, 0.15, 0.07);
      case FUEL_SHORT -> disturbed(sound, ThrottleOpening.FULL, 0.15, 0.15, 0.08);
      case FUEL_LEVEL_LOW -> disturbed(sound, Held.HALF, 5, 0.10, 0.05);
      case FUEL_LEVEL_HIGH -> disturbed(sound, Held.HALF, 5, -0.10, 0.05);
      case NEEDLE_WORN -> disturbed(sound, Held.QUARTER, 0.2, -0.12, 0.06);
      case BREATHING -> disturbed(sound, ThrottleOpening.FULL, 0.4, -0.12, 0.06);
      case THROTTLE_SLACK ->
          Arrays.stream(SLACK)
              .mapToObj(slack -> sound.rereading(reading -> behindTheGrip(reading, slack)))
              .toList();
      case IGNITION_TIMING, PLUG_TOO_HOT, PLUG_TOO_COLD, TOO_MUCH_OIL, CHOKE_ON -> List.of();
    };
  }

  private static List<Calibration> disturbed(
      Calibration sound, ThrottleOpening at, double reach, double mean, double deviation) {
    return List.of(
        sound.assuming(
            Disturbance.builder().at(at).reach(reach).mean(mean).deviation(deviation).build()));
  }

  /** At the opening where it was taken; the engine turns there as it does on the load line. */
  private static Reading behindTheGrip(Reading reading, double slack) {
    LoadLine line = reading.setup().engine().loadLine();
    ThrottleOpening meant = reading.throttle();
    ThrottleOpening opened = ThrottleOpening.ofShare(Math.max(0, meant.share() - slack));
    double slower = line.at(opened).rpm() / line.at(meant).rpm();
    return Reading.builder()
        .setup(reading.setup())
        .throttle(opened)
        .speed(EngineSpeed.ofRpm(reading.speed().rpm() * slower))
        .from(reading.from())
        .to(reading.to())
        .deviation(reading.deviation())
        .build();
  }

  /** The faults that look lean, or rich, at an opening. */
  static List<Fault> at(ThrottleOpening throttle, boolean lean) {
    double eighths = throttle.share() * 8;
    return Arrays.stream(values())
        .filter(fault -> fault.lean == lean)
        .filter(fault -> fault.fromEighths <= eighths && eighths <= fault.toEighths)
        .toList();
  }

  /** Those that may be behind harm: what looks lean there, and what pings at any mixture. */
  static List<Fault> behindHarm(ThrottleOpening throttle) {
    return Stream.concat(at(throttle, true).stream(), Stream.of(IGNITION_TIMING, PLUG_TOO_HOT))
        .distinct()
        .toList();
  }
}
