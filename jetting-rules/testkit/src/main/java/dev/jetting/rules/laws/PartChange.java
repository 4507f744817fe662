package dev.jetting.rules.laws;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One part changed by one step towards rich or lean. How a step is done on a real setting:
 *
 * <ul>
 *   <li>pilot jet, main jet: another jet, its bore bigger (richer) or smaller by the step;
 *   <li>screw: turned by the step; richer is out for a mixture screw and in for an air screw, by
 *       the kind that the carburettor has; never below its seat nor beyond its most turns;
 *   <li>cutaway: another slide, its cutaway lower (richer) or higher by the step;
 *   <li>needle jet: another one of the same neck, its bore bigger (richer) or smaller by the step;
 *   <li>needle diameter: a copy of the needle, its cylinder thinner (richer) or thicker by the
 *       step, all else alike;
 *   <li>needle taper: a copy of the needle, each of its tapers steeper (richer) or slower by the
 *       step; not a straight needle;
 *   <li>clip: moved by the step, whole grooves, lower (richer) or higher, within the grooves that
 *       there are.
 * </ul>
 *
 * <p>Not for changes of two parts at once, nor of engine, intake, air or fuel.
 *
 * @param part the part
 * @param way towards rich or towards lean
 * @param step size of the step in the part's own unit, as in {@link CustomarySteps}: mm for jets,
 *     needle jet, needle and cutaway, mm/mm for the taper, turns for the screw, grooves for the
 *     clip; more than zero
 */
public record PartChange(MeteringPart part, Way way, double step) {

  /** Which way a part is changed. */
  public enum Way {
    /** Towards more fuel by air. */
    RICHER,
    /** Towards less fuel by air. */
    LEANER;

    String word() {
      return this == RICHER ? "richer" : "leaner";
    }
  }

  /**
   * Checks the step.
   *
   * @param part the part
   * @param way towards rich or towards lean
   * @param step size of the step in the part's own unit, more than zero
   * @throws IllegalArgumentException if the step is not a finite number above zero
   */
  public PartChange {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(way, "way");
    if (!(step > 0 && Double.isFinite(step))) {
      throw new IllegalArgumentException(
          "step of " + part + " " + Numbers.text(step) + ": allowed a finite number above 0");
    }
  }

  /**
   * A change by the customary step.
   *
   * @param part the part
   * @param way towards rich or towards lean
   * @param steps the customary steps
   * @return the change
   */
  public static PartChange customary(MeteringPart part, Way way, CustomarySteps steps) {
    return new PartChange(part, way, steps.of(part));
  }

  /**
   * The setting with the part changed.
   *
   * @param setting the setting
   * @return the changed setting; empty if the change cannot be done on it: no such groove, turn or
   *     bore, a needle that does not fit its jet, or no taper to change
   */
  public Optional<Setting> on(Setting setting) {
    try {
      return changed(setting);
    } catch (IllegalArgumentException e) {
      return Optional.empty(); // the parts' own checks know best what can be
    }
  }

  /**
   * The setup with the part changed.
   *
   * @param setup the setup
   * @return the changed setup; empty if the change can not be done on its setting
   */
  public Optional<Setup> on(Setup setup) {
    return on(setup.setting()).map(setup::withSetting);
  }

  /**
   * The sheet with the part changed.
   *
   * @param sheet the sheet
   * @return the changed sheet; empty if the change can not be done on its setting
   */
  public Optional<SetupSheet> on(SetupSheet sheet) {
    return on(sheet.setup()).map(sheet::withSetup);
  }

  private Optional<Setting> changed(Setting s) {
    return switch (part) {
      case PILOT_JET -> Optional.of(s.withPilotJet(bore(s.pilotJet())));
      case MAIN_JET -> Optional.of(s.withMainJet(bore(s.mainJet())));
      case SCREW -> screw(s);
      case CUTAWAY ->
          Optional.of(
              s.withCutaway(
                  Cutaway.ofMillimetres(Numbers.sum(s.cutaway().millimetres(), -towardsRich()))));
      case NEEDLE_JET ->
          Optional.of(
              s.withNeedleJet(
                  new NeedleJet(
                      Diameter.ofMillimetres(
                          Numbers.sum(s.needleJet().bore().millimetres(), towardsRich())),
                      s.needleJet().neck())));
      case NEEDLE_DIAMETER -> Optional.of(s.withNeedle(otherCylinder(s.needle()), s.clip()));
      case NEEDLE_TAPER ->
          s.needle().tapers().isEmpty()
              ? Optional.empty()
              : Optional.of(s.withNeedle(otherTapers(s.needle()), s.clip()));
      case CLIP -> clip(s);
    };
  }

  private double towardsRich() {
    return way == Way.RICHER ? step : -step;
  }

  private JetBore bore(JetBore jet) {
    double bore = Numbers.sum(jet.millimetres(), towardsRich());
    if (bore <= 0) {
      throw new IllegalArgumentException("jet without a hole");
    }
    return JetBore.ofMillimetres(bore);
  }

  private Optional<Setting> screw(Setting s) {
    boolean outIsRicher = s.carburettor().pilot().screwKind() == ScrewKind.MIXTURE;
    double by = outIsRicher ? towardsRich() : -towardsRich();
    double turns = Numbers.sum(s.screw().turns().turns(), by);
    boolean done = by < 0 ? turns >= 0 : turns <= s.carburettor().pilot().mostTurns().turns();
    return done
        ? Optional.of(s.withScrew(new Screw(s.screw().kind(), ScrewTurns.of(turns))))
        : Optional.empty();
  }

  private Needle otherCylinder(Needle n) {
    double cylinder = Numbers.sum(n.cylinder().millimetres(), -towardsRich());
    return n.toBuilder()
        .id(copyOf(n, way == Way.RICHER ? "thinner" : "thicker"))
        .cylinder(Diameter.ofMillimetres(cylinder))
        .build();
  }

  private Needle otherTapers(Needle n) {
    List<Taper> tapers =
        n.tapers().stream()
            .map(t -> new Taper(t.start(), Numbers.sum(t.rate(), towardsRich())))
            .toList();
    return n.toBuilder()
        .id(copyOf(n, way == Way.RICHER ? "steeper" : "slower"))
        .tapers(tapers)
        .build();
  }

  private String copyOf(Needle needle, String how) {
    return needle.id() + ", " + how + " by " + size();
  }

  private Optional<Setting> clip(Setting s) {
    if (step != Math.rint(step)) {
      return Optional.empty();
    }
    Optional<ClipPosition> clip = Optional.of(s.clip());
    for (int moved = 0; moved < step && clip.isPresent(); moved++) {
      clip =
          clip.flatMap(
              way == Way.RICHER ? ClipPosition::nextTowardsBottom : ClipPosition::nextTowardsTop);
    }
    return clip.map(s::withClip);
  }

  /**
   * What the change is on a setting, in the trade's words.
   *
   * @param setting the setting before the change
   * @return such as {@code main 118 to main 120 (richer)}; where it can not be done, the part, the
   *     way and the step
   */
  public String describe(Setting setting) {
    return on(setting)
        .map(after -> shown(setting) + " to " + shown(after) + " (" + way.word() + ")")
        .orElseGet(this::toString);
  }

  private String shown(Setting s) {
    return switch (part) {
      case PILOT_JET -> TradeStyle.pilot(s.pilotJet());
      case MAIN_JET -> TradeStyle.main(s.mainJet());
      case SCREW -> TradeStyle.screw(s.carburettor().pilot().screwKind(), s.screw().turns());
      case CUTAWAY -> TradeStyle.cutaway(s.cutaway());
      case NEEDLE_JET -> "needle jet " + TradeStyle.diameter(s.needleJet().bore());
      case NEEDLE_DIAMETER -> "needle of " + TradeStyle.diameter(s.needle().cylinder());
      case NEEDLE_TAPER ->
          "first taper of " + Numbers.shortest(s.needle().tapers().get(0).rate()) + " mm/mm";
      case CLIP -> TradeStyle.clip(s.clip());
    };
  }

  private String size() {
    return Numbers.shortest(step)
        + switch (part) {
          case PILOT_JET, CUTAWAY, NEEDLE_JET, NEEDLE_DIAMETER, MAIN_JET -> " mm";
          case NEEDLE_TAPER -> " mm/mm";
          case SCREW -> step == 1 ? " turn" : " turns";
          case CLIP -> step == 1 ? " groove" : " grooves";
        };
  }

  /** {@return the part, the way and the step} */
  @Override
  public String toString() {
    return part + " " + way.word() + " by " + size();
  }
}
