package dev.jetting.examples.tuningtrial;

import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.ModelUncertainty;
import java.util.List;
import java.util.Optional;

/** Where engines and riders come from, and what is wrong with them. */
enum World {
  /** Engines and riders differ just as the library assumes. */
  AS_ASSUMED("just as assumed"),
  /** Engines differ in more ways than it assumes, if not as far, and riders err as people do. */
  RICHER("the richer kind"),
  /** The same, and as far as it assumes. */
  RICHER_WIDE("the richer kind, wider"),
  /** The same, and one engine in five has one of the troubles. */
  RICHER_FAULTY("the richer kind, wider, with faults"),

  SENSOR_OFF("sensor off"),
  PLUG_BLIND("plug reader blind to a band"),
  CABLE_SLACK("slack in the cable, never found", Trouble.CABLE_SLACK),
  CABLE_MENDED("slack in the cable, mended when asked for", Trouble.CABLE_SLACK),
  MARKS_OFF("marks on the grip off, never found", Trouble.MARKS_OFF),
  JETS_MISLABELLED("jets mislabelled", Trouble.JETS_MISLABELLED),
  AIR_LEAK("air leak, never found", Trouble.AIR_LEAK),
  AIR_LEAK_MENDED("air leak, mended when asked for", Trouble.AIR_LEAK),
  PILOT_BLOCKED("pilot blocked", Trouble.PILOT_BLOCKED),
  ALTITUDE_WRONG("altitude wrong", Trouble.ALTITUDE_WRONG),
  NEEDLE_WORN("worn needle", Trouble.NEEDLE_WORN),
  RESONANCE("resonance", Trouble.RESONANCE),
  LEAN_HOLE("lean hole", Trouble.LEAN_HOLE);

  /** Those that are also tried by habit, and with more risk accepted. */
  static final List<World> TRIED_TWICE = List.of(AS_ASSUMED, RICHER);

  /** By how much the richer kind has to be widened to differ as far as the library assumes. */
  private static final double WIDER = 1.22;

  private static final double FAULTY = 0.2;

  private final String title;
  private final Optional<Trouble> trouble;

  World(String title) {
    this.title = title;
    trouble = Optional.empty();
  }

  World(String title, Trouble trouble) {
    this.title = title;
    this.trouble = Optional.of(trouble);
  }

  String title() {
    return title;
  }

  Optional<Trouble> trouble() {
    return trouble;
  }

  /** Whether the rider mends what is wrong once the session asks him to look there. */
  boolean isMended() {
    return this == CABLE_MENDED || this == AIR_LEAK_MENDED;
  }

  /** Whether only a way of reading or an engine is odd; the others are whole populations. */
  boolean isOdd() {
    return compareTo(RICHER_FAULTY) > 0;
  }

  /** Whether it is counted by a way; habit is not tried on what it would not notice. */
  boolean isFor(Way way) {
    return switch (this) {
      case AS_ASSUMED, RICHER -> true;
      case SENSOR_OFF -> way == Way.LIBRARY_WIDEBAND;
      case PLUG_BLIND -> way == Way.LIBRARY_PLUG;
      default -> way.byLibrary();
    };
  }

  TrueEngine engine(SetupSheet sheet, ModelUncertainty spreads, long seed) {
    Altered sound = Altered.none(sound(sheet, spreads, seed));
    Chance chance = Chance.of(seed, "trouble");
    return trouble(chance).map(found -> found.on(sound, sheet, chance)).orElse(sound);
  }

  private TrueEngine sound(SetupSheet sheet, ModelUncertainty spreads, long seed) {
    return switch (this) {
      case RICHER -> RicherEngine.draw(sheet.setup(), spreads, 1, seed);
      case RICHER_WIDE, RICHER_FAULTY -> RicherEngine.draw(sheet.setup(), spreads, WIDER, seed);
      default -> AssumedEngine.draw(sheet.setup(), spreads, seed);
    };
  }

  private Optional<Trouble> trouble(Chance chance) {
    if (this != RICHER_FAULTY) {
      return trouble;
    }
    List<Trouble> troubles = List.of(Trouble.values());
    boolean faulty = chance.happens(FAULTY);
    Trouble one = troubles.get(chance.below(troubles.size()));
    return faulty ? Optional.of(one) : Optional.empty();
  }

  Rider.Skill skill() {
    return switch (this) {
      case RICHER, RICHER_WIDE, RICHER_FAULTY -> Rider.Skill.HUMAN;
      case SENSOR_OFF -> Rider.Skill.AS_ASSUMED.withSensorOff(0.03);
      case PLUG_BLIND -> Rider.Skill.AS_ASSUMED.blindToAColour();
      default -> Rider.Skill.AS_ASSUMED;
    };
  }
}
