package dev.jetting.rules;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.typical.Cooling;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.core.typical.StateOfTune;
import dev.jetting.core.typical.TypicalCarburettor;
import dev.jetting.core.typical.TypicalEngine;
import dev.jetting.core.typical.WrongGuess;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.units.Altitude;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Probability;
import dev.jetting.units.Refusal;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A machine described by what its rider knows, with typical values for the rest. It gives a sheet
 * and the list of what was assumed. The sheet is assessed with a band wider by what its typical
 * values may be off.
 *
 * <p>The least to state is displacement and state of tune (or an engine), and bore and screw (or a
 * carburettor and a screw). Then pilot jet, main jet, needle jet, needle, clip and cutaway. Last
 * altitude and temperature (or the air). Everything else may be stated too. A value that was
 * measured replaces a typical one and narrows the band:
 *
 * <pre>{@code
 * MachineDescription machine = MachineDescription.builder()
 *     .displacement(Displacement.ofCubicCentimetres(123))
 *     .tune(StateOfTune.UTILITY)
 *     .bore(Diameter.ofMillimetres(24))
 *     .screw(new Screw(ScrewKind.AIR, ScrewTurns.of(1.5)))
 *     .pilotJet(JetBore.ofHundredths(42))
 *     .mainJet(JetBore.ofHundredths(96))
 *     .needleJet(Diameter.ofMillimetres(2.15))
 *     .needle("middle", Diameter.ofMillimetres(2.02))
 *     .clip(ClipPosition.fromTop(3, 5))
 *     .cutaway(Cutaway.ofTenths(30))
 *     .altitude(Altitude.ofMetres(900))
 *     .temperature(Temperature.ofCelsius(20))
 *     .build();
 * AssessedSetting assessed = AssessedSetting.of(machine.sheet());
 * }</pre>
 */
public final class MachineDescription {

  private static final Set<MachineValue> OF_ENGINE =
      Collections.unmodifiableSet(
          EnumSet.range(MachineValue.PEAK_SPEED, MachineValue.INLET_CLOSES));

  private static final Set<MachineValue> OF_CARBURETTOR =
      Collections.unmodifiableSet(
          EnumSet.range(MachineValue.NEEDLE_JET_LENGTH, MachineValue.PILOT_HEAD));

  private static final Set<MachineValue> OF_NEEDLE =
      Collections.unmodifiableSet(
          EnumSet.range(MachineValue.TAPER_START, MachineValue.GROOVE_PITCH));

  /** What a needle leaves of a needle jet's diameter (assumed). */
  private static final double NEEDLE_BY_NEEDLE_JET = 0.94;

  private final SetupSheet sheet;
  private final Map<String, Coefficient> assumptions;

  private MachineDescription(SetupSheet sheet, Map<String, Coefficient> assumptions) {
    this.sheet = sheet;
    this.assumptions = Collections.unmodifiableMap(assumptions);
  }

  /** {@return a builder, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return the sheet, with typical values where nothing was stated} */
  public SetupSheet sheet() {
    return sheet;
  }

  /** {@return the values that are typical and not stated, in the order of their enum} */
  public Set<MachineValue> typical() {
    return sheet.typical();
  }

  /**
   * What was assumed because it was not stated.
   *
   * @return each number with its unit and reason, by plain name, in an order that does not change
   */
  public Map<String, Coefficient> assumptions() {
    return assumptions;
  }

  /**
   * How much it matters if a typical value is wrong, computed for this machine.
   *
   * @return one for each typical value, the one whose measurement would narrow the band most first
   */
  public List<WrongGuess> wrongGuesses() {
    return WrongGuess.of(sheet.setup(), sheet.typical());
  }

  /** Names each value of a machine, so that none takes the place of another. */
  public static final class Builder {
    private String title = "Machine with typical values";
    private @Nullable Displacement displacement;
    private @Nullable StateOfTune tune;
    private @Nullable Cooling cooling;
    private @Nullable InductionKind induction;
    private @Nullable Engine engine;
    private @Nullable Diameter bore;
    private @Nullable Carburettor carburettor;
    private @Nullable Screw screw;
    private @Nullable JetBore pilotJet;
    private @Nullable JetBore mainJet;
    private @Nullable NeedleJet needleJet;
    private @Nullable Needle needle;
    private @Nullable String needleId;
    private @Nullable Diameter needleCylinder;
    private @Nullable ClipPosition clip;
    private @Nullable Cutaway cutaway;
    private @Nullable Intake intake;
    private @Nullable Floats floats;
    private @Nullable Altitude altitude;
    private @Nullable Temperature temperature;
    private @Nullable RelativeHumidity humidity;
    private @Nullable Air air;
    private @Nullable Fuel fuel;
    private @Nullable Probability acceptedRisk;
    private @Nullable Riding riding;
    private PartsAtHand parts = PartsAtHand.unknown();
    private boolean usualParts;
    private Provenance provenance = Provenance.unknown();
    private final Map<MachineValue, Double> measured = new EnumMap<>(MachineValue.class);

    private Builder() {}

    /**
     * Sets one value.
     *
     * @param value a line for people; need not be set
     * @return this builder
     */
    public Builder title(String value) {
      title = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value swept volume, more than zero
     * @return this builder
     */
    public Builder displacement(Displacement value) {
      displacement = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value state of tune
     * @return this builder
     */
    public Builder tune(StateOfTune value) {
      tune = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value what carries the heat away; air where it is not set, which needs the richest
     *     mixture
     * @return this builder
     */
    public Builder cooling(Cooling value) {
      cooling = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value what opens the inlet; unknown where it is not set, which widens the band
     * @return this builder
     */
    public Builder induction(InductionKind value) {
      induction = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value an engine whose curves are known, instead of displacement and state of tune
     * @return this builder
     */
    public Builder engine(Engine value) {
      engine = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value bore of the carburettor at the slide, 5 mm to 80 mm
     * @return this builder
     */
    public Builder bore(Diameter value) {
      bore = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value a carburettor whose passages are known, instead of its bore
     * @return this builder
     */
    public Builder carburettor(Carburettor value) {
      carburettor = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value kind of the pilot screw and how far it is out
     * @return this builder
     */
    public Builder screw(Screw value) {
      screw = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value bore of the pilot jet, more than zero
     * @return this builder
     */
    public Builder pilotJet(JetBore value) {
      pilotJet = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value bore of the main jet, more than zero
     * @return this builder
     */
    public Builder mainJet(JetBore value) {
      mainJet = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value the needle jet
     * @return this builder
     */
    public Builder needleJet(NeedleJet value) {
      needleJet = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value a needle whose shape is known
     * @return this builder
     */
    public Builder needle(Needle value) {
      needle = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value where the clip sits; counts the needle's grooves
     * @return this builder
     */
    public Builder clip(ClipPosition value) {
      clip = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value cutaway of the slide, less than the bore
     * @return this builder
     */
    public Builder cutaway(Cutaway value) {
      cutaway = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value what stands before the carburettor; a usual filter where it is not set
     * @return this builder
     */
    public Builder intake(Intake value) {
      intake = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value how the floats are set; as they are meant to be where it is not set
     * @return this builder
     */
    public Builder floats(Floats value) {
      floats = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value height above sea level
     * @return this builder
     */
    public Builder altitude(Altitude value) {
      altitude = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value temperature of the air of the day
     * @return this builder
     */
    public Builder temperature(Temperature value) {
      temperature = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value relative humidity; 50 % where it is not set
     * @return this builder
     */
    public Builder humidity(RelativeHumidity value) {
      humidity = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value the air of the day, instead of altitude, temperature and humidity
     * @return this builder
     */
    public Builder air(Air value) {
      air = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value the fuel in the tank; petrol with 5 % of ethanol and premix 50:1 where it is not
     *     set
     * @return this builder
     */
    public Builder fuel(Fuel value) {
      fuel = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value accepted lean risk, more than 0 and at most 0.5; 0.1 where neither it nor the
     *     riding is set
     * @return this builder
     */
    public Builder acceptedRisk(Probability value) {
      acceptedRisk = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value what the owner rides and accepts; the road, from 10 K colder to 10 K hotter than
     *     the day, where it is not set
     * @return this builder
     */
    public Builder riding(Riding value) {
      riding = value;
      return this;
    }

    /**
     * Sets one value.
     *
     * @param value where the setting comes from; unknown where it is not set
     * @return this builder
     */
    public Builder provenance(Provenance value) {
      provenance = value;
      return this;
    }

    /**
     * Sets a needle jet with the reference neck.
     *
     * @param needleJetBore diameter of the calibrated bore, more than zero
     * @return this builder
     */
    public Builder needleJet(Diameter needleJetBore) {
      return needleJet(NeedleJet.of(needleJetBore));
    }

    /**
     * Sets a needle with a known thickness; its tapers are typical of the bore.
     *
     * @param id plain name
     * @param cylinder diameter above the first taper, more than zero
     * @return this builder
     */
    public Builder needle(String id, Diameter cylinder) {
      needleId = id;
      needleCylinder = cylinder;
      return this;
    }

    /**
     * Sets a needle with a known name only; its thickness is typical of the needle jet.
     *
     * @param id plain name
     * @return this builder
     */
    public Builder needle(String id) {
      needleId = id;
      return this;
    }

    /**
     * Sets the parts at hand.
     *
     * @param value the parts that the rider owns or can buy
     * @return this builder
     */
    public Builder parts(PartsAtHand value) {
      parts = value;
      usualParts = false;
      return this;
    }

    /**
     * Sets the parts at hand to what shops usually sell around the setting, as {@link
     * TypicalParts}.
     *
     * @return this builder
     */
    public Builder usualParts() {
      usualParts = true;
      return this;
    }

    /**
     * Replaces a typical value by one that was measured.
     *
     * @param which which value
     * @param number the number in the value's unit, {@link MachineValue#unit()}
     * @return this builder
     */
    public Builder measured(MachineValue which, double number) {
      measured.put(which, number);
      return this;
    }

    /**
     * Builds the description.
     *
     * @return the description
     * @throws IllegalArgumentException if required values are missing, if two ways to state one
     *     thing are both used, or if a value is out of range; of the first two an {@link
     *     InvalidValueException}, whose message names them all and whose field has the names of
     *     their methods here, such as {@code mainJet, clip}
     */
    public MachineDescription build() {
      checkStated();
      EnumSet<MachineValue> typical = EnumSet.noneOf(MachineValue.class);
      Map<String, Coefficient> assumptions = new LinkedHashMap<>();
      Setup setup = setup(typical, assumptions);
      for (Map.Entry<MachineValue, Double> value : measured.entrySet()) {
        setup = measured(setup, value.getKey(), value.getValue());
      }
      if (typical.contains(MachineValue.IDLE_LIFT)) {
        setup = setup.withSetting(setup.setting().withIdleLift(idleLift(setup)));
      }
      for (MachineValue value : MachineValue.values()) {
        OptionalDouble number = value.in(setup);
        if (number.isEmpty()) { // such as the timing of an inlet that has none
          typical.remove(value);
        } else if (typical.contains(value)) {
          assumptions.put(
              value.toString(),
              Coefficient.assumed(number.getAsDouble(), value.unit(), reason(value)));
        }
      }
      SetupSheet sheet =
          SetupSheet.builder()
              .title(title)
              .setup(setup)
              .riding(riding(setup.air(), assumptions))
              .parts(usualParts ? TypicalParts.around(setup.setting()) : parts)
              .provenance(provenance)
              .typical(typical)
              .build();
      return new MachineDescription(sheet, assumptions);
    }

    private static Setup measured(Setup setup, MachineValue value, double number) {
      try {
        return value.change(setup, number);
      } catch (IllegalArgumentException e) {
        throw stating("measured " + value, e);
      }
    }

    /** The same error, led by what was stated: typical values took it to what is refused. */
    private static InvalidValueException stating(String what, IllegalArgumentException e) {
      return InvalidValueException.saying(
              Sentence.of("error.at-path").with("path", what).with("problem", Refusal.of(e)))
          .causedBy(e);
    }

    private static String reason(MachineValue value) {
      return value == MachineValue.INLET_KIND
          ? "not stated: a middle between a reed valve at -1 and a piston port at 1"
          : "typical of such a machine; not measured";
    }

    private void checkStated() {
      Map<String, Sentence> missing = new LinkedHashMap<>();
      Map<String, Sentence> twice = new LinkedHashMap<>();
      if (engine == null) {
        need(missing, "displacement", "error.name.displacement", displacement);
        need(missing, "tune", "error.name.tune", tune);
      } else if (displacement != null || tune != null || cooling != null || induction != null) {
        twice.put("engine", Sentence.of("error.description.engine"));
      }
      if (carburettor == null) {
        need(missing, "bore", "error.name.bore", bore);
      } else if (bore != null) {
        twice.put("carburettor", Sentence.of("error.description.carburettor"));
      }
      need(missing, "screw", "error.name.screw-stated", screw);
      need(missing, "pilotJet", "error.name.pilot-jet", pilotJet);
      need(missing, "mainJet", "error.name.main-jet", mainJet);
      need(missing, "needleJet", "error.name.needle-jet", needleJet);
      if (needle == null) {
        need(missing, "needle", "error.name.needle-stated", needleId);
      } else if (needleId != null) {
        twice.put("needle", Sentence.of("error.description.needle"));
      }
      need(missing, "clip", "error.name.clip-short", clip);
      need(missing, "cutaway", "error.name.cutaway", cutaway);
      if (air == null) {
        need(missing, "altitude", "error.name.altitude", altitude);
        need(missing, "temperature", "error.name.temperature", temperature);
      } else if (altitude != null || temperature != null || humidity != null) {
        twice.put("air", Sentence.of("error.description.air"));
      }
      if (riding != null && acceptedRisk != null) {
        twice.put("riding", Sentence.of("error.description.riding"));
      }
      if (!missing.isEmpty()) {
        throw InvalidValueException.saying(
            Sentence.of("error.description.missing").with("missing", List.copyOf(missing.values())),
            String.join(", ", missing.keySet()),
            Sentence.of("error.description.stated"));
      }
      if (!twice.isEmpty()) {
        throw InvalidValueException.saying(
            Sentence.of("error.description.twice")
                .with("twice", twice.values().stream().reduce(Builder::both).orElseThrow()),
            String.join(", ", twice.keySet()),
            Sentence.of("error.description.stated"));
      }
    }

    private static Sentence both(Sentence first, Sentence second) {
      return Sentence.of("error.both").with("first", first).with("second", second);
    }

    private static void need(
        Map<String, Sentence> missing, String method, String key, @Nullable Object value) {
      if (value == null) {
        missing.put(method, Sentence.of(key));
      }
    }

    private Setup setup(Set<MachineValue> typical, Map<String, Coefficient> assumptions) {
      Engine ridden = engine(typical, assumptions);
      Setting setting = setting(typical, assumptions);
      Setup setup =
          Setup.builder()
              .engine(ridden)
              .setting(setting)
              .air(air(typical))
              .fuel(fuel(typical))
              .build();
      assume(typical, Set.of(MachineValue.IDLE_LIFT, MachineValue.FUEL_WARMTH));
      return setup;
    }

    private Engine engine(Set<MachineValue> typical, Map<String, Coefficient> assumptions) {
      if (engine != null) {
        return engine;
      }
      TypicalEngine usual =
          TypicalEngine.builder()
              .displacement(Objects.requireNonNull(displacement))
              .tune(Objects.requireNonNull(tune))
              .cooling(Optional.ofNullable(cooling).orElse(Cooling.AIR))
              .induction(Optional.ofNullable(induction).orElse(InductionKind.UNKNOWN))
              .build();
      assume(typical, OF_ENGINE);
      assumptions.put("factor on the mixture needed, by cooling", usual.cooling().needFactor());
      return usual.engine();
    }

    private Setting setting(Set<MachineValue> typical, Map<String, Coefficient> assumptions) {
      Screw turned = Objects.requireNonNull(screw);
      Carburettor fitted =
          Optional.ofNullable(carburettor)
              .orElseGet(
                  () -> {
                    assume(typical, OF_CARBURETTOR);
                    return usual(turned).carburettor();
                  });
      if (carburettor == null) {
        assumptions.put(
            "seat of the float valve",
            Coefficient.assumed(
                fitted.floatValve().seat().millimetres(),
                "mm",
                "typical of such a machine; plays no part in the mixture"));
      }
      NeedleJet around = Objects.requireNonNull(needleJet);
      ClipPosition position = Objects.requireNonNull(clip);
      Intake before = intake;
      if (before == null) {
        assume(typical, Set.of(MachineValue.FILTER_AREA));
        before = new TypicalCarburettor(fitted.bore(), turned.kind()).filter();
      }
      return Setting.builder()
          .carburettor(fitted)
          .intake(before)
          .pilotJet(Objects.requireNonNull(pilotJet))
          .screw(turned)
          .cutaway(Objects.requireNonNull(cutaway))
          .idleLift(Length.ofMillimetres(fitted.bore().millimetres() / 20))
          .needleJet(around)
          .needle(needle(typical, fitted, around, position))
          .clip(position)
          .mainJet(Objects.requireNonNull(mainJet))
          .floats(Optional.ofNullable(floats))
          .build();
    }

    private TypicalCarburettor usual(Screw turned) {
      return new TypicalCarburettor(Objects.requireNonNull(bore), turned.kind());
    }

    private Needle needle(
        Set<MachineValue> typical, Carburettor in, NeedleJet around, ClipPosition position) {
      if (needle != null) {
        return needle;
      }
      assume(typical, OF_NEEDLE);
      String stated = "needle cylinder " + needleCylinder;
      Diameter cylinder = needleCylinder;
      if (cylinder == null) {
        assume(typical, Set.of(MachineValue.NEEDLE_CYLINDER));
        double thickness = NEEDLE_BY_NEEDLE_JET * around.bore().millimetres();
        cylinder = Diameter.ofMillimetres(Math.rint(thickness * 100) / 100);
        stated = "needle jet " + around.bore();
      }
      try {
        return new TypicalCarburettor(in.bore(), in.pilot().screwKind())
            .needle(Objects.requireNonNull(needleId), cylinder, position.grooves());
      } catch (IllegalArgumentException e) {
        throw stating(stated, e);
      }
    }

    private Length idleLift(Setup setup) {
      Carburettor in = setup.setting().carburettor();
      return new TypicalCarburettor(in.bore(), in.pilot().screwKind()).idleLift(setup.engine());
    }

    private Air air(Set<MachineValue> typical) {
      if (air != null) {
        return air;
      }
      RelativeHumidity damp = humidity;
      if (damp == null) {
        assume(typical, Set.of(MachineValue.HUMIDITY));
        damp = RelativeHumidity.ofPercent(50);
      }
      return Air.at(Objects.requireNonNull(altitude), Objects.requireNonNull(temperature), damp);
    }

    private Fuel fuel(Set<MachineValue> typical) {
      if (fuel != null) {
        return fuel;
      }
      assume(typical, Set.of(MachineValue.ETHANOL, MachineValue.OIL_SHARE));
      return Fuel.E5.withPremix(PremixRatio.ofPetrolToOil(50));
    }

    private void assume(Set<MachineValue> typical, Set<MachineValue> values) {
      values.stream().filter(value -> !measured.containsKey(value)).forEach(typical::add);
    }

    private Riding riding(Air day, Map<String, Coefficient> assumptions) {
      if (riding != null) {
        return riding;
      }
      double celsius = day.temperature().celsius();
      double cold = Math.max(celsius - 10, Math.min(celsius, -40));
      double hot = Math.min(celsius + 10, 60);
      String why = "10 K from the day of the setting; state the riding to replace it";
      assumptions.put("temperature of the coldest day", Coefficient.assumed(cold, "°C", why));
      assumptions.put("temperature of the hottest day", Coefficient.assumed(hot, "°C", why));
      Probability accepted = acceptedRisk;
      if (accepted == null) {
        accepted = Probability.of(0.1);
        assumptions.put(
            "accepted lean risk",
            Coefficient.assumed(0.1, "1", "the owner's to choose; state it to replace it"));
      }
      return Riding.builder()
          .acceptedRisk(accepted)
          .profile(RidingProfile.assumedRoad())
          .coldest(at(day, cold))
          .hottest(at(day, hot))
          .build();
    }

    private static Air at(Air day, double celsius) {
      return Air.of(day.pressure(), Temperature.ofCelsius(celsius), day.humidity())
          .withFormula(day.formula());
    }
  }
}
