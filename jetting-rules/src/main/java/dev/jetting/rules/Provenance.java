package dev.jetting.rules;

import com.google.common.collect.ImmutableList;
import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.tuning.Meanings;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a setting comes from: the setup in which it was proven, what was seen there, and what the
 * numbers on its jets mean. What is unset is taken to have been then as the sheet says it is now,
 * and stops no report.
 *
 * <pre>{@code
 * Provenance proven =
 *     Provenance.builder()
 *         .intake(filterBox)
 *         .observed(new ProvenObservation(ThrottleOpening.FULL, new Evidence.Colour(PlugColour.BROWN)))
 *         .build();
 * }</pre>
 *
 * <p>Immutable. Not for readings of the setup as it is now: those belong to a tuning session.
 */
public final class Provenance {

  private static final Provenance UNKNOWN = builder().build();

  private final Optional<Engine> engine;
  private final Optional<Exhaust> exhaust;
  private final Optional<ProvenCylinder> cylinder;
  private final Optional<Induction> induction;
  private final Optional<Setting> setting;
  private final Optional<Carburettor> carburettor;
  private final Optional<Intake> intake;
  private final Optional<JetBore> mainJet;
  private final Optional<Fuel> fuel;
  private final Optional<Air> air;
  private final Optional<NeedleWear> needleWear;
  private final List<ProvenObservation> observed;
  private final Optional<JetFlow> pilotJetFlow;
  private final Optional<JetFlow> mainJetFlow;

  private Provenance(Draft draft) {
    engine = draft.engine;
    exhaust = draft.exhaust;
    cylinder = draft.cylinder;
    induction = draft.induction;
    setting = draft.setting;
    carburettor = draft.carburettor;
    intake = draft.intake;
    mainJet = draft.mainJet;
    fuel = draft.fuel;
    air = draft.air;
    needleWear = draft.needleWear;
    observed = draft.observed;
    pilotJetFlow = draft.pilotJetFlow;
    mainJetFlow = draft.mainJetFlow;
  }

  /** {@return a provenance in which everything is unset} */
  public static Provenance unknown() {
    return UNKNOWN;
  }

  /** {@return a builder in which everything is unset} */
  public static Builder builder() {
    return new Builder(new Draft());
  }

  /** {@return a builder that has what this provenance has} */
  public Builder toBuilder() {
    return new Builder(new Draft(this));
  }

  /** {@return the engine that the setting was proven on, all of it} */
  public Optional<Engine> engine() {
    return engine;
  }

  /** {@return the exhaust that it was proven with, on the engine of the sheet} */
  public Optional<Exhaust> exhaust() {
    return exhaust;
  }

  /** {@return the cylinder that it was proven on, with its porting} */
  public Optional<ProvenCylinder> cylinder() {
    return cylinder;
  }

  /** {@return the induction that it was proven on, with its blowback} */
  public Optional<Induction> induction() {
    return induction;
  }

  /** {@return the setting as it was proven, where parts of it were changed since} */
  public Optional<Setting> setting() {
    return setting;
  }

  /** {@return the carburettor that it was proven in} */
  public Optional<Carburettor> carburettor() {
    return carburettor;
  }

  /** {@return the intake that it was proven behind} */
  public Optional<Intake> intake() {
    return intake;
  }

  /** {@return the main jet that it was proven with, where only that was changed since} */
  public Optional<JetBore> mainJet() {
    return mainJet;
  }

  /** {@return the fuel that it was proven with} */
  public Optional<Fuel> fuel() {
    return fuel;
  }

  /** {@return the air that it was proven in} */
  public Optional<Air> air() {
    return air;
  }

  /** {@return how worn needle jet and needle were when it was proven, where new ones are in now} */
  public Optional<NeedleWear> needleWear() {
    return needleWear;
  }

  /** {@return what was seen when it was proven, in the order it was given; empty if unknown} */
  public List<ProvenObservation> observed() {
    return observed;
  }

  /** {@return the number on the pilot jet, where it is a flow; empty too where it is a bore} */
  public Optional<JetFlow> pilotJetFlow() {
    return pilotJetFlow;
  }

  /** {@return the number on the main jet, where it is a flow; empty too where it is a bore} */
  public Optional<JetFlow> mainJetFlow() {
    return mainJetFlow;
  }

  /**
   * Whether anything is known of a setup in which the setting was proven.
   *
   * @return false if only the numbers on the jets are set, or nothing
   */
  public boolean isProof() {
    return !observed.isEmpty() || proof().stream().anyMatch(Optional::isPresent);
  }

  private List<Optional<?>> proof() {
    return ImmutableList.of(
        engine,
        exhaust,
        cylinder,
        induction,
        setting,
        carburettor,
        intake,
        mainJet,
        fuel,
        air,
        needleWear);
  }

  /**
   * The engine that the setting was proven on.
   *
   * @param now the engine of the sheet, from which comes what is unset
   * @return the engine
   * @throws IllegalArgumentException if the parts do not go together, such as a delivery ratio
   *     above 2 with the proven exhaust
   */
  public Engine provenEngine(Engine now) {
    Objects.requireNonNull(now, "now");
    Engine then = engine.orElse(now);
    return Engine.builder()
        .id(then.id())
        .displacement(cylinder.map(ProvenCylinder::displacement).orElse(then.displacement()))
        .deliveryRatio(cylinder.map(ProvenCylinder::deliveryRatio).orElse(then.deliveryRatio()))
        .induction(induction.orElse(then.induction()))
        .exhaust(exhaust.orElse(then.exhaust()))
        .loadLine(then.loadLine())
        .need(then.need())
        .build();
  }

  /**
   * The setup in which the setting was proven.
   *
   * @param now the setup of the sheet, from which comes what is unset
   * @return the setup
   * @throws IllegalArgumentException if its parts do not go together, such as a slide that is cut
   *     away beyond the bore of the proven carburettor
   */
  public Setup provenSetup(Setup now) {
    return now.withEngine(provenEngine(now.engine()))
        .withSetting(provenSetting(now.setting()))
        .withAir(air.orElse(now.air()))
        .withFuel(fuel.orElse(now.fuel()));
  }

  /**
   * The setting as it was proven.
   *
   * @param now the setting of the sheet, from which comes what is unset
   * @return the setting
   * @throws IllegalArgumentException if its parts do not go together
   */
  public Setting provenSetting(Setting now) {
    Objects.requireNonNull(now, "now");
    Setting then = setting.orElse(now);
    if (carburettor.isPresent() && !carburettor.get().equals(then.carburettor())) {
      then = then.withCarburettor(carburettor.get());
    }
    then = intake.map(then::withIntake).orElse(then);
    then = mainJet.map(then::withMainJet).orElse(then);
    return needleWear.isPresent() ? needleWear.get().on(then) : then;
  }

  /**
   * The main jet with which the setting was proven.
   *
   * @param now the setting of the sheet, from which it comes where it is unset
   * @return its bore
   */
  public JetBore provenMainJet(Setting now) {
    return mainJet.or(() -> setting.map(Setting::mainJet)).orElse(now.mainJet());
  }

  /** {@return whether the engine is set, or any part of it} */
  public boolean namesEngine() {
    return engine.isPresent()
        || exhaust.isPresent()
        || cylinder.isPresent()
        || induction.isPresent();
  }

  /**
   * Whether the proof is void on an engine, because it is another one than the setting was proven
   * on: another cylinder or porting, another induction or exhaust, or another name. The mixture
   * that an engine should get and its load line are the owner's view of it and make no other
   * engine.
   *
   * @param now the engine of the sheet
   * @return true if the proof says nothing of it
   */
  public boolean isVoidOn(Engine now) {
    try {
      return !breathing(provenEngine(now)).equals(breathing(now));
    } catch (IllegalArgumentException e) {
      return true; // its parts do not go together with this engine, so they are others
    }
  }

  private static List<Object> breathing(Engine engine) {
    return List.of(
        engine.id(),
        engine.displacement(),
        engine.deliveryRatio(),
        engine.induction(),
        engine.exhaust());
  }

  /**
   * What was seen when the setting was proven, as readings of the proven setup.
   *
   * @param now the setup of the sheet, from which comes what is unset
   * @param meanings what colours and symptoms mean
   * @return the readings; none where the proof is void on the engine of the setup, or was made in
   *     another carburettor
   * @throws IllegalArgumentException if the parts of the proven setup do not go together
   */
  public List<Reading> readings(Setup now, Meanings meanings) {
    if (observed.isEmpty() || isVoidOn(now.engine())) {
      return List.of();
    }
    Setup then = provenSetup(now);
    if (!then.setting().carburettor().equals(now.setting().carburettor())) {
      return List.of();
    }
    return observed.stream().flatMap(each -> each.reading(then, meanings).stream()).toList();
  }

  /**
   * The same proof for a setup that changes: what is unset so far becomes what the sheet said
   * before the change.
   *
   * @param before the setup of the sheet until now
   * @return a provenance that has engine, setting, fuel and air set; this one if it is no proof or
   *     its parts do not go together
   */
  Provenance fixedTo(Setup before) {
    if (!isProof()) {
      return this;
    }
    Setup unworn;
    try {
      unworn = new Provenance(new Draft(this).unworn()).provenSetup(before);
    } catch (IllegalArgumentException e) {
      return this; // the rules name what does not go together
    }
    Draft draft = new Draft();
    draft.engine = Optional.of(unworn.engine());
    draft.setting = Optional.of(unworn.setting());
    draft.fuel = Optional.of(unworn.fuel());
    draft.air = Optional.of(unworn.air());
    draft.needleWear = needleWear;
    draft.observed = observed;
    draft.pilotJetFlow = pilotJetFlow;
    draft.mainJetFlow = mainJetFlow;
    return new Provenance(draft);
  }

  private List<Object> all() {
    return ImmutableList.builder().addAll(proof()).add(observed, pilotJetFlow, mainJetFlow).build();
  }

  /**
   * {@return true if everything that is set is equal}
   *
   * @param other the other object
   */
  @Override
  public boolean equals(Object other) {
    return other instanceof Provenance provenance && all().equals(provenance.all());
  }

  /** {@return a hash of everything that is set} */
  @Override
  public int hashCode() {
    return all().hashCode();
  }

  /** {@return everything, for developers} */
  @Override
  public String toString() {
    return "Provenance" + all();
  }

  /**
   * Sets what is known of where a setting comes from, one thing after the other. Each method
   * replaces what was set before. Not safe for threads.
   */
  public static final class Builder {

    private final Draft draft;

    private Builder(Draft draft) {
      this.draft = draft;
    }

    /**
     * Sets the engine, all of it.
     *
     * @param proven the engine that the setting was proven on
     * @return this builder
     */
    public Builder engine(Engine proven) {
      draft.engine = Optional.of(proven);
      return this;
    }

    /**
     * Sets the exhaust, where only parts of the engine were changed since.
     *
     * @param proven the exhaust that the setting was proven with
     * @return this builder
     */
    public Builder exhaust(Exhaust proven) {
      draft.exhaust = Optional.of(proven);
      return this;
    }

    /**
     * Sets the cylinder, where only parts of the engine were changed since.
     *
     * @param proven the cylinder that the setting was proven on
     * @return this builder
     */
    public Builder cylinder(ProvenCylinder proven) {
      draft.cylinder = Optional.of(proven);
      return this;
    }

    /**
     * Sets the induction, where only parts of the engine were changed since.
     *
     * @param proven the induction that the setting was proven on
     * @return this builder
     */
    public Builder induction(Induction proven) {
      draft.induction = Optional.of(proven);
      return this;
    }

    /**
     * Sets the setting, where parts of it were changed since.
     *
     * @param proven the setting as it was proven
     * @return this builder
     */
    public Builder setting(Setting proven) {
      draft.setting = Optional.of(proven);
      return this;
    }

    /**
     * Sets the carburettor.
     *
     * @param proven the carburettor that the setting was proven in
     * @return this builder
     */
    public Builder carburettor(Carburettor proven) {
      draft.carburettor = Optional.of(proven);
      return this;
    }

    /**
     * Sets the intake.
     *
     * @param proven the intake that the setting was proven behind
     * @return this builder
     */
    public Builder intake(Intake proven) {
      draft.intake = Optional.of(proven);
      return this;
    }

    /**
     * Sets the main jet, where it is the only jet that was changed since.
     *
     * @param proven the main jet that the setting was proven with
     * @return this builder
     */
    public Builder mainJet(JetBore proven) {
      draft.mainJet = Optional.of(proven);
      return this;
    }

    /**
     * Sets the fuel.
     *
     * @param proven the fuel that the setting was proven with
     * @return this builder
     */
    public Builder fuel(Fuel proven) {
      draft.fuel = Optional.of(proven);
      return this;
    }

    /**
     * Sets the air.
     *
     * @param proven the air that the setting was proven in
     * @return this builder
     */
    public Builder air(Air proven) {
      draft.air = Optional.of(proven);
      return this;
    }

    /**
     * Sets the wear of needle jet and needle.
     *
     * @param proven how worn they were when the setting was proven
     * @return this builder
     */
    public Builder needleWear(NeedleWear proven) {
      draft.needleWear = Optional.of(proven);
      return this;
    }

    /**
     * Sets what was seen.
     *
     * @param all what was seen when the setting was proven, at one opening or more
     * @return this builder
     */
    public Builder observed(ProvenObservation... all) {
      return observed(List.of(all));
    }

    /**
     * Sets what was seen.
     *
     * @param all what was seen when the setting was proven; empty if unknown
     * @return this builder
     */
    public Builder observed(List<ProvenObservation> all) {
      draft.observed = List.copyOf(all);
      return this;
    }

    /**
     * Sets the number on the pilot jet.
     *
     * @param stamped the flow that the number means
     * @return this builder
     */
    public Builder pilotJetFlow(JetFlow stamped) {
      draft.pilotJetFlow = Optional.of(stamped);
      return this;
    }

    /**
     * Sets the number on the main jet.
     *
     * @param stamped the flow that the number means
     * @return this builder
     */
    public Builder mainJetFlow(JetFlow stamped) {
      draft.mainJetFlow = Optional.of(stamped);
      return this;
    }

    /**
     * Unsets the numbers on both jets, as for other jets.
     *
     * @return this builder
     */
    public Builder withoutJetFlows() {
      draft.pilotJetFlow = Optional.empty();
      draft.mainJetFlow = Optional.empty();
      return this;
    }

    /**
     * Builds the provenance.
     *
     * @return the provenance
     * @throws IllegalArgumentException if a part is set both on its own and within the engine or
     *     the setting, or observations of one kind are less than 1/8 of the throttle apart
     */
    public Provenance build() {
      draft.check();
      return new Provenance(draft);
    }
  }

  /** What is set so far. */
  private static final class Draft {
    private Optional<Engine> engine = Optional.empty();
    private Optional<Exhaust> exhaust = Optional.empty();
    private Optional<ProvenCylinder> cylinder = Optional.empty();
    private Optional<Induction> induction = Optional.empty();
    private Optional<Setting> setting = Optional.empty();
    private Optional<Carburettor> carburettor = Optional.empty();
    private Optional<Intake> intake = Optional.empty();
    private Optional<JetBore> mainJet = Optional.empty();
    private Optional<Fuel> fuel = Optional.empty();
    private Optional<Air> air = Optional.empty();
    private Optional<NeedleWear> needleWear = Optional.empty();
    private List<ProvenObservation> observed = List.of();
    private Optional<JetFlow> pilotJetFlow = Optional.empty();
    private Optional<JetFlow> mainJetFlow = Optional.empty();

    Draft() {}

    Draft(Provenance from) {
      engine = from.engine;
      exhaust = from.exhaust;
      cylinder = from.cylinder;
      induction = from.induction;
      setting = from.setting;
      carburettor = from.carburettor;
      intake = from.intake;
      mainJet = from.mainJet;
      fuel = from.fuel;
      air = from.air;
      needleWear = from.needleWear;
      observed = from.observed;
      pilotJetFlow = from.pilotJetFlow;
      mainJetFlow = from.mainJetFlow;
    }

    Draft unworn() {
      needleWear = Optional.empty();
      return this;
    }

    void check() {
      boolean engineParts = exhaust.isPresent() || cylinder.isPresent() || induction.isPresent();
      if (engine.isPresent() && engineParts) {
        throw InvalidValueException.worded(
            Sentence.of("error.provenance.engine"), Sentence.of("error.provenance.engine.allowed"));
      }
      boolean settingParts = carburettor.isPresent() || intake.isPresent() || mainJet.isPresent();
      if (setting.isPresent() && settingParts) {
        throw InvalidValueException.worded(
            Sentence.of("error.provenance.setting"),
            Sentence.of("error.provenance.setting.allowed"));
      }
      for (int i = 0; i < observed.size(); i++) {
        ProvenObservation one = observed.get(i);
        for (ProvenObservation other : observed.subList(0, i)) {
          if (one.repeats(other)) {
            throw InvalidValueException.worded(
                Sentence.of("error.observations-near")
                    .with("first", other.throttle())
                    .with("second", one.throttle()),
                Sentence.of("error.observations-apart"));
          }
        }
      }
    }
  }
}
