package dev.jetting.examples.kitdesk;

import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Family;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartShape;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What a sheet's carburettor has of its own where others of its family have what they are sold
 * with: screw, float valve, and floats as they are set.
 *
 * @param fields these as fields of a kit's recommendation; null for a part that the catalogue does
 *     not have
 */
record OwnFittings(Map<String, @Nullable Object> fields) {

  static OwnFittings of(Setting setting, Catalogue catalogue, Family family) {
    Carburettor own = setting.carburettor();
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    if (hasOtherScrew(own, family)) {
      fields.put(
          "fittedScrew",
          id(
              catalogue,
              family,
              part ->
                  part.shape() instanceof PartShape.PilotScrew screw
                      && screw.kind() == own.pilot().screwKind()
                      && screw.areaPerTurn().equals(own.pilot().areaPerTurn())));
    }
    if (hasOtherFloatValve(own, family)) {
      fields.put(
          "floatValve",
          id(
              catalogue,
              family,
              part ->
                  part.shape() instanceof PartShape.Valve valve
                      && isSame(valve.floatValve(), own.floatValve())));
    }
    setting.floats().ifPresent(floats -> fields.put("floats", fields(floats)));
    return new OwnFittings(fields);
  }

  static boolean hasOtherScrew(Carburettor own, Family family) {
    return !own.pilot().areaPerTurn().equals(family.carburettor().pilot().areaPerTurn());
  }

  static boolean hasOtherFloatValve(Carburettor own, Family family) {
    return !isSame(own.floatValve(), family.carburettor().floatValve());
  }

  /** Where a coefficient comes from makes no other valve. */
  private static boolean isSame(FloatValve one, FloatValve other) {
    return one.seat().equals(other.seat())
        && one.supplyHead().equals(other.supplyHead())
        && one.discharge().value() == other.discharge().value();
  }

  private static @Nullable String id(Catalogue catalogue, Family family, Predicate<Part> same) {
    return catalogue.parts().stream()
        .filter(part -> catalogue.fits(part, family) && same.test(part))
        .findFirst()
        .map(Part::id)
        .orElse(null);
  }

  private static Map<String, String> fields(Floats floats) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("set", floats.set().toString());
    fields.put("nominal", floats.nominal().toString());
    return fields;
  }
}
