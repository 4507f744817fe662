package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Screw;
import dev.jetting.rules.ranges.SizeRanges;
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
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters, longer than 60 characters or not one line of visible characters, or a size is
   *     out of the range that an assessment can compute with
   */
  public Recommendation {
    Checks.id("machine", "recommended machine", machine);
    Checks.id("pilotJet", "recommended pilot jet", pilotJet);
    SizeRanges.screwTurns("screw.turns", screw.turns());
    Checks.id("slide", "recommended slide", slide);
    SizeRanges.idleLift("idleLift", idleLift);
    Checks.id("needleJet", "recommended needle jet", needleJet);
    Checks.id("needle", "recommended needle", needle);
    Objects.requireNonNull(clip, "clip");
    Checks.id("mainJet", "recommended main jet", mainJet);
    fittedScrew.ifPresent(id -> Checks.id("fittedScrew", "recommended screw", id));
    floatValve.ifPresent(id -> Checks.id("floatValve", "recommended float valve", id));
    floats.ifPresent(levels -> SizeRanges.floats("floats", levels));
  }
}
