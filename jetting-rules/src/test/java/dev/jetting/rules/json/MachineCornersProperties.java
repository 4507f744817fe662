package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.typical.Cooling;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.core.typical.StateOfTune;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.MachineDescription;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.Altitude;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What the least of a description may say gives a sheet that can be assessed. */
class MachineCornersProperties {

  /** What a refusal begins with: something that was stated, or a field of the sheet. */
  private static final String STATED =
      "(altitude|cutaway|cylinder of needle|air temperature|temperature of the fuel|needle jet"
          + "|needle cylinder|measured [a-z' ]+:|engine\\.|setting\\.|effective area) ?[^\n]+";

  @Property(tries = 20)
  void machineAtTheCorners_hasASheetWithAReportOfFiniteNumbers(@ForAll long seed) {
    CornerRuns.run(seed, MachineCornersProperties::isAnswered);
  }

  private static boolean isAnswered(Random random) {
    SetupSheet sheet;
    MachineDescription machine;
    try {
      machine = drawn(random).build();
      sheet = machine.sheet();
    } catch (InvalidValueException e) {
      assertThat(e.getMessage()).matches(STATED).hasSizeLessThan(1000);
      return false;
    }
    CornerRuns.assertFinite(machine.assumptions().toString());
    CornerRuns.assertFinite(machine.wrongGuesses().toString());
    assertThat(SheetJson.read(SheetJson.write(sheet))).isEqualTo(sheet);
    Report report = StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheet));
    assertThat(report.results())
        .noneMatch(result -> result.outcome().status() == Outcome.Status.BROKEN);
    assertThat(ReportJson.read(ReportJson.write(report))).isEqualTo(report);
    CornerRuns.assertFinite(ReportText.of(report));
    return true;
  }

  private static MachineDescription.Builder drawn(Random random) {
    double bore = near(random, 24, 5, 80);
    double jet = near(random, 2.6, 0.5, 6);
    MachineDescription.Builder machine =
        MachineDescription.builder()
            .displacement(Displacement.ofCubicCentimetres(near(random, 125, 5, 2500)))
            .tune(any(random, StateOfTune.values()))
            .bore(Diameter.ofMillimetres(bore))
            .screw(
                new Screw(any(random, ScrewKind.values()), ScrewTurns.of(near(random, 1.5, 0, 20))))
            .pilotJet(JetBore.ofMillimetres(near(random, 0.5, 0.1, 3)))
            .mainJet(JetBore.ofMillimetres(near(random, 1.1, 0.3, 5)))
            .needleJet(Diameter.ofMillimetres(jet))
            .cutaway(Cutaway.ofMillimetres(near(random, 3.5, 0, 40)))
            .altitude(Altitude.ofMetres(near(random, 300, -400, 9000)))
            .temperature(Temperature.ofCelsius(near(random, 20, -60, 70)));
    int grooves = 1 + random.nextInt(9);
    machine.clip(ClipPosition.fromTop(1 + random.nextInt(grooves), grooves));
    if (random.nextBoolean()) {
      machine.needle("n", Diameter.ofMillimetres(near(random, 0.94 * jet, 0.4, 6)));
    } else {
      machine.needle("n");
    }
    if (random.nextBoolean()) {
      machine.cooling(any(random, Cooling.values())).induction(any(random, InductionKind.values()));
    }
    if (random.nextInt(4) == 0) {
      machine.humidity(RelativeHumidity.ofPercent(near(random, 50, 0, 100)));
    }
    if (random.nextInt(4) == 0) {
      machine.acceptedRisk(Probability.of(near(random, 0.1, 1e-9, 0.5)));
    }
    if (random.nextInt(4) == 0) {
      machine.intake(Intake.filter("i", Area.ofSquareMillimetres(near(random, 900, 20, 20_000))));
    }
    if (random.nextInt(4) == 0) {
      machine.floats(
          new Floats(
              FloatLevel.ofMillimetres(near(random, 20, 0, 100)),
              FloatLevel.ofMillimetres(near(random, 20, 0, 100))));
    }
    if (random.nextInt(4) == 0) {
      machine.usualParts();
    }
    for (int i = random.nextInt(6) - 3; i > 0; i--) {
      double[] numbers = {0, 1e-6, 0.01, 0.5, 1, 2, 10, 100, 5000, 1e5, 1e9, -1, -1e9, Double.NaN};
      machine.measured(any(random, MachineValue.values()), numbers[random.nextInt(numbers.length)]);
    }
    return machine;
  }

  /** Usual, at an end, or within it. */
  private static double near(Random random, double usual, double least, double most) {
    double end = random.nextBoolean() ? least : most;
    return switch (random.nextInt(5)) {
      case 0 -> end;
      case 1 -> end + (usual - end) / 100;
      case 2 -> end + (usual - end) / 3;
      default -> usual;
    };
  }

  private static <T> T any(Random random, T[] values) {
    return values[random.nextInt(values.length)];
  }
}
