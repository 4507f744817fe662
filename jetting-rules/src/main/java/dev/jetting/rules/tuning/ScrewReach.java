package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.ThrottleOpening;

/**
 * How far the screw of the pilot circuit reaches within its working range.
 *
 * @param richest λ at idle with the screw at its rich end, by that where it stands; 1 at most
 * @param leanest λ at idle with the screw at its lean end, by that where it stands; 1 at least
 */
record ScrewReach(double richest, double leanest) {

  /** A screw's working range, turns out (common practice, no source). */
  private static final double LEAST_TURNS = 0.75;

  private static final double MOST_TURNS = 2.5;

  static ScrewReach of(Setup setup) {
    double here = lambda(setup);
    double in = lambda(setup.withSetting(at(LEAST_TURNS, setup.setting())));
    double out = lambda(setup.withSetting(at(MOST_TURNS, setup.setting())));
    return new ScrewReach(
        Math.min(1, Math.min(in, out) / here), Math.max(1, Math.max(in, out) / here));
  }

  private static double lambda(Setup setup) {
    return MixtureModel.of(setup).at(ThrottleOpening.CLOSED).lambda().value();
  }

  static boolean holds(ScrewTurns screw) {
    return screw.turns() >= LEAST_TURNS && screw.turns() <= MOST_TURNS;
  }

  /** Whether a screw stands within its range, or nearer to it than it stood. */
  static boolean isWithinOrNearer(double turns, double before) {
    return beyond(turns) < beyond(before) || beyond(turns) == 0;
  }

  private static double beyond(double turns) {
    return Math.max(0, Math.max(LEAST_TURNS - turns, turns - MOST_TURNS));
  }

  /** The setting with its screw within the range, as near as can be to where it stands. */
  static Setting within(Setting setting) {
    return at(setting.screw().turns().turns(), setting);
  }

  private static Setting at(double turns, Setting setting) {
    double most = Math.min(MOST_TURNS, setting.carburettor().pilot().mostTurns().turns());
    double allowed = Math.min(Math.max(turns, LEAST_TURNS), most);
    Screw screw = setting.screw();
    return screw.turns().turns() == allowed
        ? setting
        : setting.withScrew(new Screw(screw.kind(), ScrewTurns.of(allowed)));
  }
}
