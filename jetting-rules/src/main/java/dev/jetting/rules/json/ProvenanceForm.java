package dev.jetting.rules.json;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.NeedleWear;
import dev.jetting.rules.ProvenCylinder;
import dev.jetting.rules.ProvenObservation;
import dev.jetting.rules.Provenance;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import java.util.List;
import java.util.Optional;

/**
 * Where a setting comes from in JSON. What is left out was then as the sheet says it is now.
 *
 * @param engine the engine that the setting was proven on, all of it
 * @param exhaust the exhaust that it was proven with, where the engine is left out
 * @param cylinder the cylinder that it was proven on, where the engine is left out
 * @param induction the induction that it was proven on, where the engine is left out
 * @param setting the setting as it was proven, where parts of it were changed since
 * @param carburettor the carburettor that it was proven in, where the setting is left out
 * @param intake the intake that it was proven behind, where the setting is left out
 * @param mainJet the main jet that it was proven with, where the setting is left out
 * @param fuel the fuel that it was proven with
 * @param air the air that it was proven in
 * @param needleWear how worn needle jet and needle were, where new ones are in now
 * @param observed what was seen when it was proven
 * @param pilotJetFlow the number on the pilot jet, where it is a flow
 * @param mainJetFlow the number on the main jet, where it is a flow
 */
record ProvenanceForm(
    Optional<Engine> engine,
    Optional<Exhaust> exhaust,
    Optional<ProvenCylinder> cylinder,
    Optional<Induction> induction,
    Optional<Setting> setting,
    Optional<Carburettor> carburettor,
    Optional<Intake> intake,
    Optional<JetBore> mainJet,
    Optional<Fuel> fuel,
    Optional<Air> air,
    Optional<NeedleWear> needleWear,
    Optional<List<ProvenObservation>> observed,
    Optional<JetFlow> pilotJetFlow,
    Optional<JetFlow> mainJetFlow) {

  static ProvenanceForm of(Provenance p) {
    return new ProvenanceForm(
        p.engine(),
        p.exhaust(),
        p.cylinder(),
        p.induction(),
        p.setting(),
        p.carburettor(),
        p.intake(),
        p.mainJet(),
        p.fuel(),
        p.air(),
        p.needleWear(),
        Optional.of(p.observed()).filter(seen -> !seen.isEmpty()),
        p.pilotJetFlow(),
        p.mainJetFlow());
  }

  Provenance provenance() {
    Provenance.Builder builder = Provenance.builder();
    engine.ifPresent(builder::engine);
    exhaust.ifPresent(builder::exhaust);
    cylinder.ifPresent(builder::cylinder);
    induction.ifPresent(builder::induction);
    setting.ifPresent(builder::setting);
    carburettor.ifPresent(builder::carburettor);
    intake.ifPresent(builder::intake);
    mainJet.ifPresent(builder::mainJet);
    fuel.ifPresent(builder::fuel);
    air.ifPresent(builder::air);
    needleWear.ifPresent(builder::needleWear);
    observed.ifPresent(builder::observed);
    pilotJetFlow.ifPresent(builder::pilotJetFlow);
    mainJetFlow.ifPresent(builder::mainJetFlow);
    return builder.build();
  }
}
