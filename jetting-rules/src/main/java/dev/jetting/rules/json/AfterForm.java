package dev.jetting.rules.json;

import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.Sentence;
import java.util.Optional;

/**
 * A setting after a change, in JSON. One with its carburettor is whole. One without is in a report
 * and states what differs from the setting of the sheet.
 *
 * @param carburettor the carburettor
 * @param intake what stands before it
 * @param pilotJet bore of the pilot jet, more than zero
 * @param screw the screw of the pilot circuit
 * @param cutaway cutaway of the slide, less than the bore
 * @param idleLift lift of the closed slide on its stop, 0.01 mm or more and less than the bore
 * @param needleJet the needle jet
 * @param needle the needle
 * @param clip where the clip sits; counts the needle's grooves
 * @param mainJet bore of the main jet, more than zero
 * @param floats how the floats are set; in a whole setting left out if unknown
 */
record AfterForm(
    Optional<Carburettor> carburettor,
    Optional<Intake> intake,
    Optional<JetBore> pilotJet,
    Optional<Screw> screw,
    Optional<Cutaway> cutaway,
    Optional<Length> idleLift,
    Optional<NeedleJet> needleJet,
    Optional<Needle> needle,
    Optional<ClipPosition> clip,
    Optional<JetBore> mainJet,
    Optional<Floats> floats) {

  static AfterForm of(After after) {
    return of(after, Optional.empty());
  }

  static AfterForm of(After after, Optional<Setting> before) {
    Setting s = after.setting();
    Optional<Setting> same =
        before.filter(
            b -> b.carburettor().equals(s.carburettor()) && b.floats().equals(s.floats()));
    return new AfterForm(
        changed(s.carburettor(), same.map(Setting::carburettor)),
        changed(s.intake(), same.map(Setting::intake)),
        changed(s.pilotJet(), same.map(Setting::pilotJet)),
        changed(s.screw(), same.map(Setting::screw)),
        changed(s.cutaway(), same.map(Setting::cutaway)),
        changed(s.idleLift(), same.map(Setting::idleLift)),
        changed(s.needleJet(), same.map(Setting::needleJet)),
        changed(s.needle(), same.map(Setting::needle)),
        changed(s.clip(), same.map(Setting::clip)),
        changed(s.mainJet(), same.map(Setting::mainJet)),
        same.isPresent() ? Optional.empty() : s.floats());
  }

  private static <T> Optional<T> changed(T now, Optional<T> before) {
    return Optional.of(now).filter(value -> !before.equals(Optional.of(value)));
  }

  /** A whole one. */
  After after() {
    return after(Optional.empty());
  }

  After after(Optional<Setting> before) {
    Optional<Setting> same = before.filter(b -> carburettor.isEmpty());
    return new After(
        new Setting(
            stated("carburettor", carburettor, same.map(Setting::carburettor)),
            stated("intake", intake, same.map(Setting::intake)),
            stated("pilotJet", pilotJet, same.map(Setting::pilotJet)),
            stated("screw", screw, same.map(Setting::screw)),
            stated("cutaway", cutaway, same.map(Setting::cutaway)),
            stated("idleLift", idleLift, same.map(Setting::idleLift)),
            stated("needleJet", needleJet, same.map(Setting::needleJet)),
            stated("needle", needle, same.map(Setting::needle)),
            stated("clip", clip, same.map(Setting::clip)),
            stated("mainJet", mainJet, same.map(Setting::mainJet)),
            floats.or(() -> same.flatMap(Setting::floats))));
  }

  private static <T> T stated(String field, Optional<T> now, Optional<T> before) {
    return now.or(() -> before)
        .orElseThrow(
            () ->
                InvalidValueException.worded(
                    Sentence.of("error.setting-without").with("field", field),
                    Sentence.of("error.setting-whole")));
  }
}
