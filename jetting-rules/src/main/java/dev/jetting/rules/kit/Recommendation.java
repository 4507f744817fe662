package dev.jetting.rules.kit;

import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Screw;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Length;
import java.util.Objects;
import java.util.Optional;

/**
 * How a seller says to set a kit on one machine: parts by their ids in the catalogue.
 *
 * @param machine id of the machine
 * @param pilotJet id of the pilot jet
 * @param screw kind of screw that the turns are meant for, and the turns
 * @param slide id of the slide
 * @param idleLift lift of the closed slide on its stop
 * @param needleJet id of the needle jet
 * @param needle id of the needle
 * @param clip where its clip sits
 * @param mainJet id of the main jet
 * @param fittedScrew id of the screw to fit; empty for the one that the carburettor comes with
 * @param floatValve id of the float valve to fit; empty for the one that the carburettor comes with
 * @param floats how to set the floats; empty where the seller does not say
 */
public record Recommendation(
    String machine,
    String pilotJet,
    Screw screw,
    String slide,
    Length idleLift,
    String needleJet,
    String needle,
    ClipPosition clip,
    String mainJet,
    Optional<String> fittedScrew,
    Optional<String> floatValve,
    Optional<Floats> floats) {

  /**
   * Checks the ids.
   *
   * @param machine id of the machine
   * @param pilotJet id of the pilot jet
   * @param screw kind of screw that the turns are meant for, and the turns
   * @param slide id of the slide
   * @param idleLift lift of the closed slide on its stop
   * @param needleJet id of the needle jet
   * @param needle id of the needle
   * @param clip where its clip sits
   * @param mainJet id of the main jet
   * @param fittedScrew id of the screw to fit; empty for the one that the carburettor comes with
   * @param floatValve id of the float valve to fit; empty for the one that the carburettor comes
   *     with
   * @param floats how to set the floats; empty where the seller does not say
   * @throws IllegalArgumentException if an id is blank
   */
  public Recommendation {
    Ids.check("recommended machine", machine);
    Ids.check("recommended pilot jet", pilotJet);
    Objects.requireNonNull(screw, "screw");
    Ids.check("recommended slide", slide);
    Objects.requireNonNull(idleLift, "idleLift");
    Ids.check("recommended needle jet", needleJet);
    Ids.check("recommended needle", needle);
    Objects.requireNonNull(clip, "clip");
    Ids.check("recommended main jet", mainJet);
    fittedScrew.ifPresent(id -> Ids.check("recommended screw", id));
    floatValve.ifPresent(id -> Ids.check("recommended float valve", id));
    Objects.requireNonNull(floats, "floats");
  }
}
