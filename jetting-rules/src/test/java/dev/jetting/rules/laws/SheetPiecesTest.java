package dev.jetting.rules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rule;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.Cutaway;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each component of a sheet has its piece in the law kit. */
class SheetPiecesTest {

  private static final SetupSheet PLAIN = PlainSheet.SHEET;
  private static final SetupSheet OTHER = other();

  /** Whose components are pieces of their own; all other records are pieces as they are. */
  private static final Set<Class<?>> TAKEN_APART =
      Set.of(
          SetupSheet.class,
          Setup.class,
          Riding.class,
          Engine.class,
          Setting.class,
          Carburettor.class);

  @Test
  void otherSheet_differsInEveryComponent() {
    assertThat(alike(PLAIN, OTHER, "sheet")).isEmpty();
  }

  private static List<String> alike(Object a, Object b, String path) {
    List<String> alike = new ArrayList<>();
    for (RecordComponent component : a.getClass().getRecordComponents()) {
      String name = path + "." + component.getName();
      Object mine = value(component, a);
      Object others = value(component, b);
      if (TAKEN_APART.contains(mine.getClass())) {
        alike.addAll(alike(mine, others, name));
      } else if (mine.equals(others)) {
        alike.add(name);
      }
    }
    return alike;
  }

  /** A component without a piece would stay plain. */
  @Test
  void allPieces_makeTheOtherSheet() {
    SetupSheet made = PLAIN;
    for (int round = 0; round < 2; round++) {
      for (SheetProperty<?> piece : SheetPropertyTable.ALL) {
        made = piece.taken(made, OTHER).orElse(made);
      }
    }
    assertThat(made).isEqualTo(OTHER);
  }

  /** A copy that resets what it does not mention would change another piece. */
  @Test
  void onePiece_changesNoOther() {
    for (SheetProperty<?> piece : SheetPropertyTable.ALL) {
      SetupSheet taken = piece.taken(OTHER, PLAIN).orElse(OTHER);
      List<SheetProperty<?>> changed =
          SheetPropertyTable.ALL.stream()
              .filter(each -> each.differs(taken, OTHER))
              .<SheetProperty<?>>map(p -> p)
              .toList();
      assertThat(changed).as("changed by %s", piece.difference(PLAIN, OTHER)).hasSizeLessThan(2);
    }
  }

  /** On a sheet that differs outside of the band, what was proven and the floats stay. */
  @ParameterizedTest
  @ValueSource(strings = {"fuel-change", "intake-change", "float-level"})
  void standardRule_onWhatIsProvenOrSet_narrowed_holdsTheBandLaw(String id) {
    Rule narrowed =
        StandardRulebook.rulebook().rule(id).orElseThrow().within(ThrottleBand.eighths(2, 4));
    assertThat(
            LawKit.of(List.of(Laws.band()))
                .hold(Candidate.of(narrowed), Stream.of(Trial.of(OTHER)))
                .holds())
        .isTrue();
  }

  @Test
  void floats_thatAloneViolate_areNamed() {
    Rule level =
        Rule.named("level")
            .judging(
                s -> {
                  if (s.setting().floats().isPresent()) {
                    throw new IllegalStateException("no floats, please");
                  }
                  return Outcome.passed();
                });
    Counterexample found =
        LawKit.of(List.of(Laws.neverBroken()))
            .hold(Candidate.of(level), Stream.of(Trial.of(OTHER)))
            .violation("never-broken")
            .orElseThrow();
    assertThat(found.differences())
        .containsExactly(
            "float level 21 mm where float level 19 mm is meant instead of unknown float level");
  }

  private static Object value(RecordComponent component, Object record) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(component.toString(), e);
    }
  }

  private static SetupSheet other() {
    Setup setup = Odd.SHEET.setup();
    Setting setting = setup.setting();
    FlowCoefficients flow =
        FlowCoefficients.assumed().withNozzleOpen(Coefficient.assumed(2.2, "1", "another family"));
    PilotCircuit pilot =
        setting.carburettor().pilot().toBuilder()
            .screwKind(ScrewKind.AIR)
            .mostTurns(ScrewTurns.of(5))
            .build();
    Needle needle =
        setting.needle().toBuilder()
            .groovePitch(Length.ofMillimetres(1))
            .tip(Length.ofMillimetres(47))
            .build();
    Carburettor carburettor =
        setting.carburettor().toBuilder()
            .needleJetLength(Length.ofMillimetres(3.4))
            .needleJetHead(Length.ofMillimetres(10))
            .pilot(pilot)
            .flow(flow)
            .build();
    return Odd.SHEET.toBuilder()
        .setup(
            setup.withSetting(
                setting.toBuilder()
                    .carburettor(carburettor)
                    .needle(needle)
                    .floats(
                        Optional.of(
                            Floats.builder()
                                .set(FloatLevel.ofMillimetres(21))
                                .nominal(FloatLevel.ofMillimetres(19))
                                .build()))
                    .build()))
        .parts(
            PartsAtHand.builder()
                .pilotJets(List.of(JetBore.ofMillimetres(0.5)))
                .cutaways(List.of(Cutaway.ofMillimetres(3)))
                .mainJets(List.of(JetBore.ofMillimetres(1.2)))
                .build())
        .provenance(Provenance.builder().fuel(Fuel.PETROL).intake(Intake.openMouth()).build())
        .typical(Set.of(MachineValue.PEAK_SPEED, MachineValue.TAPER_RATE))
        .build();
  }
}
