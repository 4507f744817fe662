package dev.jetting.rules;

import com.google.common.collect.Sets;
import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Spreads;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a tuner writes down about one machine: the setup, how it is ridden, and the parts there are.
 *
 * @param title a line for people; one line, at most 200 characters
 * @param setup engine, setting, air and fuel
 * @param riding what the owner rides and what he accepts
 * @param parts the parts that the rider owns or can buy
 * @param provenance where the setting comes from
 * @param typical the values of the machine that are typical and were not measured, in the order of
 *     their enum; empty for a measured machine
 */
public record SetupSheet(
    String title,
    Setup setup,
    Riding riding,
    PartsAtHand parts,
    Provenance provenance,
    Set<MachineValue> typical) {

  private static final int LONGEST_TITLE = 200;

  /**
   * Checks the title, and that the fuel in the float chamber is known on each of the days.
   *
   * @param title a line for people
   * @param setup engine, setting, air and fuel
   * @param riding what the owner rides and what he accepts
   * @param parts the parts that the rider owns or can buy
   * @param provenance where the setting comes from
   * @param typical the values of the machine that are typical and were not measured
   * @throws IllegalArgumentException if the title is blank, too long or not one line of visible
   *     characters, or a blended fuel is outside −40 to 80 °C in the float chamber on one of the
   *     days
   */
  public SetupSheet {
    Objects.requireNonNull(title, "title");
    PlainLine.checked("title", "title of a setup sheet", title, LONGEST_TITLE);
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(riding, "riding");
    Objects.requireNonNull(parts, "parts");
    Objects.requireNonNull(provenance, "provenance");
    typical = Sets.immutableEnumSet(typical);
    SheetRanges.check(setup, parts, provenance);
    Riding.checkFuel("the day of the setup", setup.air(), setup.fuel(), setup.fuelWarmerBy());
    riding.checkFuel(setup.fuel(), setup.fuelWarmerBy());
  }

  /**
   * The days on which the setting must hold: that of the setup, the coldest and the hottest.
   *
   * @return their airs in this order, each once
   */
  public List<Air> days() {
    return Stream.of(setup.air(), riding.coldest(), riding.hottest()).distinct().toList();
  }

  /**
   * Returns the risk model with which this sheet is assessed: wider by what its typical values may
   * be off, and by an inlet of unknown kind. A model that is already wider for them stays as it is.
   *
   * @param measured limits, spreads and steps for a measured machine
   * @return the wider model; the same one where nothing is typical and the inlet is known
   */
  public RiskModel riskModel(RiskModel measured) {
    return measured.withGuesses(setup, guessed());
  }

  /**
   * Returns the calibration with which this sheet is assessed: one that starts from the spreads of
   * a measured machine starts from the wider spreads of {@link #riskModel} instead.
   *
   * @param measured limits, spreads and steps for a measured machine
   * @param calibration what readings have taught about the engine
   * @return the calibration with the same readings; itself if it starts from other spreads
   */
  public Calibration calibration(RiskModel measured, Calibration calibration) {
    Spreads narrow = measured.uncertainty().spreads();
    return guessed().isEmpty() || !calibration.spreads().equals(narrow)
        ? calibration
        : calibration.withSpreads(riskModel(measured).uncertainty().spreads());
  }

  /** What is typical, and the kind of the inlet where nobody stated it. */
  private Set<MachineValue> guessed() {
    if (setup.engine().induction().kind() != InductionKind.UNKNOWN) {
      return typical;
    }
    Set<MachineValue> guessed = EnumSet.of(MachineValue.INLET_KIND);
    guessed.addAll(typical);
    return guessed;
  }

  /**
   * This sheet with another title.
   *
   * @param other a line for people
   * @return the changed sheet
   */
  public SetupSheet withTitle(String other) {
    Objects.requireNonNull(other, "other");
    return new SetupSheet(other, setup, riding, parts, provenance, typical);
  }

  /**
   * This sheet with another setup: the owner changed something. What was proven stays as it was:
   * where the provenance leaves it unset, it becomes what this sheet says. Typical values stay
   * typical until {@link #withTypical} says otherwise.
   *
   * @param other the setup
   * @return the changed sheet
   */
  public SetupSheet withSetup(Setup other) {
    return other.equals(setup)
        ? this
        : new SetupSheet(title, other, riding, parts, provenance.fixedTo(setup), typical);
  }

  /**
   * This sheet with another way of riding.
   *
   * @param other what the owner rides and what he accepts
   * @return the changed sheet
   */
  public SetupSheet withRiding(Riding other) {
    return new SetupSheet(title, setup, other, parts, provenance, typical);
  }

  /**
   * This sheet with other parts at hand.
   *
   * @param other the parts
   * @return the changed sheet
   */
  public SetupSheet withParts(PartsAtHand other) {
    return new SetupSheet(title, setup, riding, other, provenance, typical);
  }

  /**
   * This sheet with another provenance.
   *
   * @param other where the setting comes from
   * @return the changed sheet
   */
  public SetupSheet withProvenance(Provenance other) {
    return new SetupSheet(title, setup, riding, parts, other, typical);
  }

  /**
   * This sheet with other values that are typical and were not measured.
   *
   * @param other the values; empty for a measured machine
   * @return the changed sheet
   */
  public SetupSheet withTypical(Set<MachineValue> other) {
    Objects.requireNonNull(other, "other");
    return new SetupSheet(title, setup, riding, parts, provenance, other);
  }

  /** {@return a builder of a sheet, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this sheet set} */
  public Builder toBuilder() {
    return new Builder()
        .title(title)
        .setup(setup)
        .riding(riding)
        .parts(parts)
        .provenance(provenance)
        .typical(typical);
  }

  /** Names each component of a sheet, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String title;
    private @Nullable Setup setup;
    private @Nullable Riding riding;
    private PartsAtHand parts = PartsAtHand.unknown();
    private Provenance provenance = Provenance.unknown();
    private Set<MachineValue> typical = Set.of();

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value a line for people
     * @return this builder
     */
    public Builder title(String value) {
      title = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value engine, setting, air and fuel
     * @return this builder
     */
    public Builder setup(Setup value) {
      setup = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value what the owner rides and what he accepts
     * @return this builder
     */
    public Builder riding(Riding value) {
      riding = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the parts that the rider owns or can buy; need not be set
     * @return this builder
     */
    public Builder parts(PartsAtHand value) {
      parts = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value where the setting comes from; need not be set
     * @return this builder
     */
    public Builder provenance(Provenance value) {
      provenance = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the values of the machine that are typical and were not measured; need not be
     *     set for a measured machine
     * @return this builder
     */
    public Builder typical(Set<MachineValue> value) {
      typical = Sets.immutableEnumSet(value);
      return this;
    }

    /**
     * Builds the sheet.
     *
     * @return the sheet
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public SetupSheet build() {
      return new SetupSheet(
          Checks.present("sheet", "title", title),
          Checks.present("sheet", "setup", setup),
          Checks.present("sheet", "riding", riding),
          parts,
          provenance,
          typical);
    }
  }
}
