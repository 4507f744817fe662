package dev.jetting.examples.tuningtrial;

import dev.jetting.core.air.Air;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * An engine with a fault that its sheet does not know.
 *
 * @param sound the engine without the fault
 * @param parts the parts that are really in, for those that the sheet names
 * @param air the air that it really stands in
 * @param shift by how much leaner it runs besides
 * @param falseAir ln of all the air at idle by that which the slide lets in
 * @param grip how far the slide is open where he means to hold an opening
 */
record Altered(
    TrueEngine sound,
    UnaryOperator<Setting> parts,
    UnaryOperator<Air> air,
    Shift shift,
    ToDoubleFunction<Setting> falseAir,
    UnaryOperator<ThrottleOpening> grip)
    implements TrueEngine {

  /** Change of ln λ. */
  @FunctionalInterface
  interface Shift {
    double at(Setting setting, Air air, ThrottleOpening throttle, EngineSpeed speed);
  }

  /** An engine without a fault yet. */
  static Altered none(TrueEngine sound) {
    return new Altered(
        sound,
        UnaryOperator.identity(),
        UnaryOperator.identity(),
        (setting, air, throttle, speed) -> 0,
        setting -> 0,
        UnaryOperator.identity());
  }

  Altered withParts(UnaryOperator<Setting> other) {
    return new Altered(sound, other, air, shift, falseAir, grip);
  }

  Altered withAir(UnaryOperator<Air> other) {
    return new Altered(sound, parts, other, shift, falseAir, grip);
  }

  Altered withShift(Shift other) {
    return new Altered(sound, parts, air, other, falseAir, grip);
  }

  Altered withFalseAir(ToDoubleFunction<Setting> other) {
    return new Altered(sound, parts, air, shift, other, grip);
  }

  Altered withGrip(UnaryOperator<ThrottleOpening> other) {
    return new Altered(sound, parts, air, shift, falseAir, other);
  }

  @Override
  public Air today() {
    return sound.today();
  }

  @Override
  public EngineSpeed peak() {
    return sound.peak();
  }

  @Override
  public double lnLambda(Setting setting, Air named, ThrottleOpening throttle, EngineSpeed speed) {
    Setting own = parts.apply(setting);
    Air around = air.apply(named);
    return sound.lnLambda(own, around, throttle, speed) + shift.at(own, around, throttle, speed);
  }

  @Override
  public double lnOverrun(Setting setting, Air named) {
    Setting own = parts.apply(setting);
    Air around = air.apply(named);
    return sound.lnOverrun(own, around) + shift.at(own, around, ThrottleOpening.CLOSED, peak());
  }

  @Override
  public double falseAir(Setting setting) {
    return falseAir.applyAsDouble(parts.apply(setting));
  }

  @Override
  public ThrottleOpening opened(ThrottleOpening meant) {
    return grip.apply(meant);
  }
}
