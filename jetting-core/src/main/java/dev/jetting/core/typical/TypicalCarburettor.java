package dev.jetting.core.typical;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Taper;
import dev.jetting.units.Area;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Objects;

/**
 * A slide carburettor as it usually is, by its bore and the kind of its screw.
 *
 * <p>Lengths grow with the bore and areas with its square. The proportions are this project's own
 * assumption, taken from the reference setting of MODEL.md; none is a measurement. Not for a
 * carburettor whose passages were measured: state those.
 *
 * @param bore bore at the slide, 5 mm to 80 mm
 * @param screwKind which passage of the pilot circuit the screw meters
 */
public record TypicalCarburettor(Diameter bore, ScrewKind screwKind) {

  /** Pilot outlet by the square of the bore, mixture screw 1½ turns out. */
  private static final double OUTLET = 4.77e-4;

  /** Air bleed by the square of the bore, air screw 1½ turns out. */
  private static final double BLEED = 6.9e-4;

  private static final double PROGRESSION = 4.6e-4;
  private static final double USUAL_TURNS = 1.5;
  private static final double UNCOVERED_AT = 0.075;
  private static final double NEEDLE_JET_LENGTH = 0.1;
  private static final double NEEDLE_JET_HEAD = 0.37;
  private static final double FLOAT_VALVE_SEAT = 0.085;
  private static final double TAPER_START = 0.17;
  private static final double TAPER_RATE = 0.0226;
  private static final double GROOVE_PITCH = 0.031;
  private static final double NEEDLE_TIP = 1.6;
  private static final double FILTER_BY_BORE = 1.2;

  /** Idle lift, mm, by (cm³ · rpm/√mm)^(2/3): 1.82 mm at the reference setting of MODEL.md. */
  private static final double IDLE_LIFT = 1.452e-3;

  /**
   * Checks for nulls.
   *
   * @param bore bore at the slide, 5 mm to 80 mm
   * @param screwKind which passage of the pilot circuit the screw meters
   */
  public TypicalCarburettor {
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(screwKind, "screwKind");
  }

  /**
   * Returns the carburettor.
   *
   * @return the carburettor
   * @throws IllegalArgumentException if the bore is outside 5 mm to 80 mm
   */
  public Carburettor carburettor() {
    boolean mixture = screwKind == ScrewKind.MIXTURE;
    return Carburettor.builder()
        .id(
            "typical "
                + Decimals.shortest(Math.rint(bore.millimetres() * 100) / 100)
                + " mm slide carburettor, "
                + (mixture ? "mixture screw" : "air screw"))
        .bore(bore)
        .needleJetLength(byBore(NEEDLE_JET_LENGTH))
        .needleJetHead(byBore(NEEDLE_JET_HEAD))
        .pilot(
            PilotCircuit.builder()
                .screwKind(screwKind)
                .areaPerTurn(area((mixture ? OUTLET : BLEED) / USUAL_TURNS))
                .fixedArea(area(mixture ? BLEED : OUTLET))
                .progressionHole(area(PROGRESSION))
                .uncoversFrom(Length.ofMillimetres(0))
                .uncoversTo(byBore(UNCOVERED_AT))
                .head(Length.ofMillimetres(1))
                .mostTurns(ScrewTurns.of(4))
                .build())
        .floatValve(
            new FloatValve(
                Diameter.ofMillimetres(rounded(FLOAT_VALVE_SEAT * bore.millimetres(), 10)),
                Length.ofMillimetres(150),
                Coefficient.assumed(0.6, "1", "valve, tap and hose together; not measured")))
        .flow(FlowCoefficients.assumed())
        .build();
  }

  /**
   * A needle with a known thickness and otherwise typical values.
   *
   * @param id plain name
   * @param cylinder diameter above the first taper, more than zero
   * @param grooves number of grooves, 1 to 9
   * @return the needle, with one taper
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters, a number is out of range, or the needle is too thin for the usual taper
   */
  public Needle needle(String id, Diameter cylinder, int grooves) {
    return Needle.builder()
        .id(id)
        .cylinder(cylinder)
        .tapers(List.of(new Taper(byBore(TAPER_START), TAPER_RATE)))
        .grooves(grooves)
        .groovePitch(byBore(GROOVE_PITCH))
        .tip(byBore(NEEDLE_TIP))
        .build();
  }

  /**
   * The lift of the closed slide on its stop. The gap of a small lift grows as √D x^1.5, and the
   * air at idle with displacement and speed, so x goes with (V N/√D)^(2/3).
   *
   * @param engine the engine that idles on it
   * @return the lift, at least 0.1 mm and at most a fifth of the bore
   */
  public Length idleLift(Engine engine) {
    double demand =
        engine.displacement().cubicCentimetres()
            * engine.loadLine().idle().rpm()
            / Math.sqrt(bore.millimetres());
    double lift = IDLE_LIFT * StrictMath.pow(demand, 2.0 / 3);
    double held = Math.min(Math.max(lift, 0.1), bore.millimetres() / 5);
    return Length.ofMillimetres(rounded(held, 100));
  }

  /** {@return a filter whose effective area is 1.2 times that of the bore} */
  public Intake filter() {
    double area = Area.ofCircle(bore).squareMillimetres();
    return Intake.filter(
        "usual filter", Area.ofSquareMillimetres(Math.rint(FILTER_BY_BORE * area)));
  }

  private Length byBore(double share) {
    return Length.ofMillimetres(rounded(share * bore.millimetres(), 100));
  }

  private Area area(double share) {
    double square = bore.millimetres() * bore.millimetres();
    return Area.ofSquareMillimetres(rounded(share * square, 1000));
  }

  private static double rounded(double value, double parts) {
    return Math.rint(value * parts) / parts;
  }
}
