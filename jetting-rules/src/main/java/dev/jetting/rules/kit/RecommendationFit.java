package dev.jetting.rules.kit;

import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Provenance;
import dev.jetting.units.Area;
import dev.jetting.units.JetFlow;
import java.util.Map;
import java.util.Optional;

/** Whether one recommendation of a kit can be followed with what is in the kit. */
final class RecommendationFit {

  private final Catalogue catalogue;
  private final Optional<Family> family;
  private final Map<String, Part> included;
  private final Recommendation says;
  private final int place;
  private final KitFindings findings;

  RecommendationFit(
      Catalogue catalogue,
      Optional<Family> family,
      Map<String, Part> included,
      Recommendation says,
      int place,
      KitFindings findings) {
    this.catalogue = catalogue;
    this.family = family;
    this.included = included;
    this.says = says;
    this.place = place;
    this.findings = findings;
  }

  /** The setting, if it can be put together. */
  Optional<Fitted> fitted() {
    Optional<Machine> machine = catalogue.machine(says.machine());
    if (machine.isEmpty()) {
      findings.unknown(at("machine"), says.machine());
    }
    Optional<Part> pilotJet = part("pilotJet", says.pilotJet(), SeriesKind.PILOT_JET);
    Optional<PartShape.Slide> slide =
        shape("slide", says.slide(), SeriesKind.SLIDE, PartShape.Slide.class);
    Optional<PartShape.NeedleJetShape> tube =
        shape("needleJet", says.needleJet(), SeriesKind.NEEDLE_JET, PartShape.NeedleJetShape.class);
    Optional<PartShape.NeedleShape> rod =
        shape("needle", says.needle(), SeriesKind.NEEDLE, PartShape.NeedleShape.class);
    Optional<Part> mainJet = part("mainJet", says.mainJet(), SeriesKind.MAIN_JET);
    Optional<Carburettor> carburettor = family.flatMap(this::carburettor);
    boolean hangs = hangs(tube, rod);
    if (machine.isEmpty()
        || pilotJet.isEmpty()
        || slide.isEmpty()
        || tube.isEmpty()
        || rod.isEmpty()
        || mainJet.isEmpty()
        || carburettor.isEmpty()
        || !hangs) {
      return Optional.empty();
    }
    try {
      Setting setting =
          Setting.builder()
              .carburettor(carburettor.get())
              .intake(machine.get().intake())
              .pilotJet(catalogue.boreOf(pilotJet.get()))
              .screw(says.screw())
              .cutaway(slide.get().cutaway())
              .idleLift(says.idleLift())
              .needleJet(tube.get().needleJet())
              .needle(rod.get().needle())
              .clip(says.clip())
              .mainJet(catalogue.boreOf(mainJet.get()))
              .floats(says.floats())
              .build();
      return Optional.of(
          new Fitted(
              place,
              family.orElseThrow(),
              machine.get(),
              setting,
              numbering(pilotJet.get(), mainJet.get()),
              catalogue.boreUncertainty(pilotJet.get()),
              catalogue.boreUncertainty(mainJet.get())));
    } catch (IllegalArgumentException e) {
      findings.cannotBeSet("recommendations[" + place + "]", e);
      return Optional.empty();
    }
  }

  private String at(String field) {
    return "recommendations[" + place + "]." + field;
  }

  /** A part that is named: in the catalogue, in the kit and of the right kind. */
  private Optional<Part> part(String field, String id, SeriesKind kind) {
    Optional<Part> part = Optional.ofNullable(included.get(id));
    if (part.isEmpty()) {
      part = catalogue.part(id);
      if (part.isEmpty()) {
        findings.unknown(at(field), id);
        return part;
      }
      Part foreign = part.get();
      Optional<Family> misfit = family.filter(its -> !catalogue.fits(foreign, its));
      misfit.ifPresent(its -> findings.doesNotFit(at(field), foreign, its));
      findings.notInKit(at(field), foreign, misfit.isEmpty());
    }
    SeriesKind is = catalogue.kind(part.get());
    if (is != kind) {
      findings.ofAnotherKind(at(field), part.get(), is, kind);
      return Optional.empty();
    }
    return part;
  }

  private <S extends PartShape> Optional<S> shape(
      String field, String id, SeriesKind kind, Class<S> type) {
    return part(field, id, kind).map(part -> type.cast(part.shape()));
  }

  private boolean hangs(
      Optional<PartShape.NeedleJetShape> tube, Optional<PartShape.NeedleShape> rod) {
    boolean hangs = true;
    if (rod.isPresent() && says.clip().grooves() != rod.get().needle().grooves()) {
      findings.clip(at("clip"), says.clip(), rod.get().needle());
      hangs = false;
    }
    if (tube.isPresent()
        && rod.isPresent()
        && rod.get().needle().cylinder().millimetres()
            >= tube.get().needleJet().bore().millimetres()) {
      findings.needleTooThick(at("needle"), rod.get().needle(), tube.get().needleJet());
      hangs = false;
    }
    return hangs;
  }

  /** The family's carburettor with the screw and the float valve that are to be fitted. */
  private Optional<Carburettor> carburettor(Family its) {
    Carburettor body = its.carburettor();
    if (says.fittedScrew().isEmpty() && says.floatValve().isEmpty()) {
      return Optional.of(body);
    }
    Optional<Area> areaPerTurn = Optional.of(body.pilot().areaPerTurn());
    if (says.fittedScrew().isPresent()) {
      areaPerTurn =
          shape(
                  "fittedScrew",
                  says.fittedScrew().get(),
                  SeriesKind.SCREW,
                  PartShape.PilotScrew.class)
              .map(PartShape.PilotScrew::areaPerTurn);
    }
    Optional<FloatValve> floatValve = Optional.of(body.floatValve());
    if (says.floatValve().isPresent()) {
      floatValve =
          shape(
                  "floatValve",
                  says.floatValve().get(),
                  SeriesKind.FLOAT_VALVE,
                  PartShape.Valve.class)
              .map(PartShape.Valve::floatValve);
    }
    if (areaPerTurn.isEmpty() || floatValve.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Carburettor.builder()
            .id(body.id())
            .bore(body.bore())
            .needleJetLength(body.needleJetLength())
            .needleJetHead(body.needleJetHead())
            .pilot(withScrew(body.pilot(), areaPerTurn.get()))
            .floatValve(floatValve.get())
            .flow(body.flow())
            .build());
  }

  private static PilotCircuit withScrew(PilotCircuit pilot, Area areaPerTurn) {
    return PilotCircuit.builder()
        .screwKind(pilot.screwKind())
        .areaPerTurn(areaPerTurn)
        .fixedArea(pilot.fixedArea())
        .progressionHole(pilot.progressionHole())
        .uncoversFrom(pilot.uncoversFrom())
        .uncoversTo(pilot.uncoversTo())
        .head(pilot.head())
        .mostTurns(pilot.mostTurns())
        .build();
  }

  /** Records the flow of jets numbered by flow, so that the rulebook can check their numbers. */
  private static Provenance numbering(Part pilotJet, Part mainJet) {
    Provenance.Builder numbers = Provenance.builder();
    flow(pilotJet).ifPresent(numbers::pilotJetFlow);
    flow(mainJet).ifPresent(numbers::mainJetFlow);
    return numbers.build();
  }

  private static Optional<JetFlow> flow(Part jet) {
    return jet.shape() instanceof PartShape.JetByFlow flowed
        ? Optional.of(flowed.flow())
        : Optional.empty();
  }
}
