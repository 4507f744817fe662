package dev.jetting.rules;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;

/**
 * How worn needle jet and needle were when a setting was proven, beyond the sizes that the setting
 * says. New parts of the same sizes pass less fuel, so that the setting is leaner with them.
 *
 * <p>Not for worn parts that are still in: gauge them, and write their sizes into the setting.
 *
 * @param needleJet by how much the bore of the needle jet was wider, 0 mm to 0.2 mm
 * @param needle by how much the needle was thinner, 0 mm to 0.2 mm
 */
public record NeedleWear(Length needleJet, Length needle) {

  /** Beyond it a pair is not worn but another one (assumed). */
  private static final double MOST = 0.2;

  /**
   * Checks the numbers.
   *
   * @param needleJet by how much the bore of the needle jet was wider, 0 mm to 0.2 mm
   * @param needle by how much the needle was thinner, 0 mm to 0.2 mm
   * @throws IllegalArgumentException if one is more than 0.2 mm
   */
  public NeedleWear {
    check("needle jet", needleJet);
    check("needle", needle);
  }

  private static void check(String part, Length wear) {
    if (wear.millimetres() > MOST) {
      throw new IllegalArgumentException(
          "wear of the " + part + " " + wear + ": allowed 0 mm to 0.2 mm");
    }
  }

  /** The setting with parts so worn; throws if they leave no metal at the needle's tip. */
  Setting on(Setting setting) {
    NeedleJet jet = setting.needleJet();
    Needle rod = setting.needle();
    Needle thinner =
        new Needle(
            rod.id(),
            sum(rod.cylinder(), -needle.millimetres()),
            rod.tapers(),
            rod.grooves(),
            rod.groovePitch(),
            rod.tip());
    return setting
        .withNeedleJet(new NeedleJet(sum(jet.bore(), needleJet.millimetres()), jet.neck()))
        .withNeedle(thinner, setting.clip());
  }

  private static Diameter sum(Diameter diameter, double millimetres) {
    return Diameter.ofMillimetres(diameter.millimetres() + millimetres);
  }
}
