package dev.jetting.examples.kitdesk;

import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.kit.Family;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The carburettor of a sheet in relation to a family. It is one of the family's bodies, perhaps
 * with another screw or float valve, or one that is to be replaced by the family's.
 */
final class SheetCarburettor {

  private SheetCarburettor() {}

  /** A setting as it is on a carburettor of the family, moved over to one if it is on another. */
  static Setting fitted(Setting setting, Family family) throws UnusableException {
    Carburettor own = setting.carburettor();
    if (own.id().equals(family.carburettor().id())) {
      checkBody(own, family);
      return setting;
    }
    try {
      Carburettor other = family.carburettor();
      return setting
          .withCarburettor(other)
          .withScrew(new Screw(other.pilot().screwKind(), setting.screw().turns()));
    } catch (IllegalArgumentException e) {
      throw new UnusableException(
          "the sheet's setting in family " + family.id() + ": " + e.getMessage());
    }
  }

  /** What of this a reader of the results should know: a line, or none. */
  static String said(Setting given, Family family) {
    Carburettor own = given.carburettor();
    if (!own.id().equals(family.carburettor().id())) {
      return Table.fitted("On the family's carburettor, in place of " + own.id(), 80) + "\n";
    }
    boolean screw = OwnFittings.hasOtherScrew(own, family);
    boolean valve = OwnFittings.hasOtherFloatValve(own, family);
    if (screw && valve) {
      return "With screw and float valve of the sheet, which are not the family's\n";
    }
    String part = screw ? "screw" : "float valve";
    return screw || valve ? "With the " + part + " of the sheet, which is not the family's\n" : "";
  }

  private static void checkBody(Carburettor own, Family family) throws UnusableException {
    Map<String, Object> wanted = body(family.carburettor());
    for (Map.Entry<String, Object> dimension : body(own).entrySet()) {
      Object its = wanted.get(dimension.getKey());
      if (!dimension.getValue().equals(its)) {
        throw new UnusableException(
            "carburettor \""
                + own.id()
                + "\" of the sheet: its "
                + dimension.getKey()
                + " "
                + Table.fitted(dimension.getValue().toString(), 80)
                + " is not that of family "
                + family.id()
                + ": allowed "
                + Table.fitted(String.valueOf(its), 80)
                + ", or another name for a carburettor that is none of the family");
      }
    }
  }

  /** What cannot be changed with a screw or a float valve, by its name in a sheet. */
  private static Map<String, Object> body(Carburettor carburettor) {
    PilotCircuit pilot = carburettor.pilot();
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("bore", carburettor.bore());
    body.put("needleJetLength", carburettor.needleJetLength());
    body.put("needleJetHead", carburettor.needleJetHead());
    body.put("pilot.screwKind", Words.word(pilot.screwKind()));
    body.put("pilot.fixedArea", pilot.fixedArea());
    body.put("pilot.progressionHole", pilot.progressionHole());
    body.put("pilot.uncoversFrom", pilot.uncoversFrom());
    body.put("pilot.uncoversTo", pilot.uncoversTo());
    body.put("pilot.head", pilot.head());
    body.put("pilot.mostTurns", pilot.mostTurns());
    body.put("flow", carburettor.flow());
    return body;
  }
}
