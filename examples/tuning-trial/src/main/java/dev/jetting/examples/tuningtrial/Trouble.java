package dev.jetting.examples.tuningtrial;

import dev.jetting.core.air.Air;
import dev.jetting.core.air.StandardAtmosphere;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Needle;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.tuning.Check;
import dev.jetting.units.Altitude;
import dev.jetting.units.Diameter;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Optional;

/** What can be wrong with an engine without its sheet knowing. All of it is invented. */
enum Trouble {
  /** The slide stays 3 to 10 % of the throttle behind the marks on the grip. */
  CABLE_SLACK(Check.THROTTLE_MARKS) {
    @Override
    Altered on(Altered engine, SetupSheet sheet, Chance chance) {
      double slack = chance.between(0.03, 0.10);
      return engine.withGrip(meant -> ThrottleOpening.ofShare(Math.max(0, meant.share() - slack)));
    }
  },

  /** Each mark on the grip is off by its own error, 3 % of the throttle by standard deviation. */
  MARKS_OFF(Check.THROTTLE_MARKS) {
    @Override
    Altered on(Altered engine, SetupSheet sheet, Chance chance) {
      long grip = chance.seed();
      return engine.withGrip(meant -> marked(meant, grip));
    }
  },

  /** One main or pilot jet in four is a size smaller or bigger than is stamped on it. */
  JETS_MISLABELLED(Check.JETS_CLEAN) {
    @Override
    Altered on(Altered engine, SetupSheet sheet, Chance chance) {
      long bag = chance.seed();
      return engine.withParts(
          setting ->
              setting
                  .withMainJet(stamped(setting.mainJet(), sheet.parts().mainJets(), bag))
                  .withPilotJet(stamped(setting.pilotJet(), sheet.parts().pilotJets(), bag)));
    }
  },

  /** A hole of 1 to 4 mm² between slide and cylinder. */
  AIR_LEAK(Check.AIR_LEAK) {
    @Override
    Altered on(Altered engine, SetupSheet sheet, Chance chance) {
      double area = chance.between(1, 4) * 1e-6;
      Setup setup = sheet.setup();
      EngineSpeed idle = setup.engine().loadLine().at(ThrottleOpening.CLOSED);
      return engine
          .withShift(
              (setting, air, throttle, speed) ->
                  leaked(setup.withSetting(setting).withAir(air), throttle, speed, area))
          .withFalseAir(
              setting -> leaked(setup.withSetting(setting), ThrottleOpening.CLOSED, idle, area));
    }
  },

  /** Dirt takes 20 to 35 % of the pilot jet's area, whichever jet is in. */
  PILOT_BLOCKED(Check.JETS_CLEAN) {
    @Override
    Altered on(Altered engine, SetupSheet sheet, Chance chance) {
      double left = Math.sqrt(1 - chance.between(0.20, 0.35));
      return engine.withParts(
          setting ->
              setting.withPilotJet(JetBore.ofMillimetres(setting.pilotJet().millimetres() * left)));
    }
  },

  /** The place lies 400 m higher or lower than was written down, on every day. */
  ALTITUDE_WRONG {
    @Override
    Altered on(Altered engine, SetupSheet sheet, Chance chance) {
      double higher = chance.happens(0.5) ? 400 : -400;
      return engine.withAir(air -> moved(air, higher));
    }
  },

  /** The needle that was in at the start is thinner by 0.01 to 0.04 mm; the others are new. */
  NEEDLE_WORN(Check.SLIDE_AND_NEEDLE) {
    @Override
    Altered on(Altered engine, SetupSheet sheet, Chance chance) {
      Needle used = sheet.setup().setting().needle();
      double lost = chance.between(0.01, 0.04);
      return engine.withParts(
          setting ->
              setting.needle().equals(used)
                  ? setting.withNeedle(thinner(used, lost), setting.clip())
                  : setting);
    }
  },

  /** λ swings by 5 % to either side, once in 1500 rpm. */
  RESONANCE {
    @Override
    Altered on(Altered engine, SetupSheet sheet, Chance chance) {
      double phase = chance.between(0, 2 * Math.PI);
      return engine.withShift(
          (setting, air, throttle, speed) ->
              0.05 * StrictMath.sin(2 * Math.PI * speed.rpm() / 1500 + phase));
    }
  },

  /** A lean hole of 8 % somewhere between a quarter and full, an eighth of the throttle wide. */
  LEAN_HOLE {
    @Override
    Altered on(Altered engine, SetupSheet sheet, Chance chance) {
      double middle = chance.between(0.25, 0.95);
      return engine.withShift(
          (setting, air, throttle, speed) -> {
            double away = (throttle.share() - middle) / HOLE;
            return 0.08 * StrictMath.exp(-away * away / 2);
          });
    }
  };

  /** Standard deviation of the hole's shape: a bit more than an eighth wide at half its depth. */
  private static final double HOLE = 0.055;

  private static final double MARK = 0.03;

  private static final double LEAK_DISCHARGE = 0.7;

  /** Share of the pressure beyond which a hole passes no more. */
  private static final double CHOKED = 0.47;

  private static final double MISLABELLED = 0.25;

  private final Optional<Check> check;

  Trouble() {
    check = Optional.empty();
  }

  Trouble(Check check) {
    this.check = Optional.of(check);
  }

  /** The check that would find it; empty where none of the library's would. */
  Optional<Check> check() {
    return check;
  }

  abstract Altered on(Altered engine, SetupSheet sheet, Chance chance);

  /** ln of all the air by the metered air; the leak is taken as an incompressible flow. */
  private static double leaked(
      Setup setup, ThrottleOpening throttle, EngineSpeed speed, double area) {
    MixturePoint point = MixtureModel.of(setup).at(throttle, speed);
    double density = setup.air().density().kilogramsPerCubicMetre();
    double depression =
        Math.min(point.depression().pascals(), CHOKED * setup.air().pressure().pascals());
    double leak = LEAK_DISCHARGE * area * Math.sqrt(2 * density * depression);
    return StrictMath.log1p(leak / point.airFlow().kilogramsPerSecond());
  }

  /** The stops at both ends need no mark. */
  private static ThrottleOpening marked(ThrottleOpening meant, long grip) {
    double share = meant.share();
    double off =
        share == 0 || share == 1 ? 0 : Chance.of(grip, "mark", Math.rint(share * 64)).normal(MARK);
    return ThrottleOpening.ofShare(Math.min(1, Math.max(0, share + off)));
  }

  private static JetBore stamped(JetBore jet, List<JetBore> drawer, long bag) {
    Chance chance = Chance.of(bag, "label", Math.rint(jet.millimetres() * 1e4));
    if (!chance.happens(MISLABELLED)) {
      return jet;
    }
    List<JetBore> sizes = drawer.stream().sorted().toList();
    double step = (size(sizes, sizes.size() - 1) - size(sizes, 0)) / (sizes.size() - 1);
    return JetBore.ofMillimetres(jet.millimetres() + (chance.happens(0.5) ? step : -step));
  }

  private static double size(List<JetBore> sizes, int index) {
    return sizes.get(index).millimetres();
  }

  private static Air moved(Air air, double higher) {
    double metres = StandardAtmosphere.pressureAltitude(air.pressure()).metres() + higher;
    return Air.of(
            StandardAtmosphere.pressure(Altitude.ofMetres(metres)),
            air.temperature(),
            air.humidity())
        .withFormula(air.formula());
  }

  private static Needle thinner(Needle needle, double lost) {
    return Needle.builder()
        .id(needle.id())
        .cylinder(Diameter.ofMillimetres(needle.cylinder().millimetres() - lost))
        .tapers(needle.tapers())
        .grooves(needle.grooves())
        .groovePitch(needle.groovePitch())
        .tip(needle.tip())
        .build();
  }
}
