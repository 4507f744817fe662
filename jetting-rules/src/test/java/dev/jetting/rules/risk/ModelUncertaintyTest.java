package dev.jetting.rules.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Spreads;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.typical.Cooling;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.core.typical.StateOfTune;
import dev.jetting.core.typical.TypicalEngine;
import dev.jetting.rules.TwoHundred;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The spreads against what the cycle of the crankcase shows (CYCLE.md of jetting-core-cycle). */
class ModelUncertaintyTest {

  private static final ModelUncertainty ASSUMED = ModelUncertainty.assumed();
  private static final Set<MachineValue> DELIVERY =
      EnumSet.of(MachineValue.DELIVERY_AT_IDLE, MachineValue.DELIVERY_AT_PEAK);

  private static final Setup SETUP =
      TwoHundred.sheet(
              new TypicalEngine(
                      Displacement.ofCubicCentimetres(200),
                      StateOfTune.STANDARD,
                      Cooling.FAN,
                      InductionKind.ROTARY_VALVE)
                  .engine(),
              TwoHundred.ALL_ROUND)
          .setup();

  /** AgreementTest there counts what share of reference engines a band of these spreads covers. */
  @Test
  void spreads_areThoseWhoseCoverageTheCycleShows() throws IOException {
    String document = Files.readString(Path.of("../jetting-core/cycle/CYCLE.md"));
    String table =
        document.substring(
            document.indexOf("<!-- spreads"), document.indexOf("<!-- end of the spreads -->"));
    String row = table.lines().filter(line -> line.startsWith("| 0.")).findAny().orElseThrow();
    List<Double> values =
        Pattern.compile("[| ]+").splitAsStream(row).skip(1).map(Double::valueOf).toList();

    assertThat(
            new Spreads(
                values.get(0),
                values.get(1),
                values.get(2),
                values.get(3),
                values.get(4),
                values.get(5)))
        .isEqualTo(ASSUMED.spreads());
    double unknown =
        ASSUMED
            .withGuesses(ofUnknownKind(), EnumSet.of(MachineValue.INLET_KIND))
            .residual()
            .value();
    assertThat(unknown).isCloseTo(Math.hypot(values.get(4), values.get(6)), within(1e-12));
  }

  /** 0.04 and 0.06 are what the cycle asks for; more where the kind of the inlet is unknown. */
  @ParameterizedTest
  @ValueSource(doubles = {0.0625, 0.125, 0.25, 0.5, 0.75, 1})
  void form_isWideEnoughForWhatIsNotKnown(double opening) {
    ModelUncertainty guessedDelivery = ASSUMED.withGuesses(SETUP, DELIVERY);
    double known = form(ASSUMED, SETUP, opening);
    double guessed = form(guessedDelivery, SETUP, opening);
    Setup unknown = ofUnknownKind();
    double unknownKind =
        form(
            guessedDelivery.withGuesses(unknown, EnumSet.of(MachineValue.INLET_KIND)),
            unknown,
            opening);

    assertThat(known).isGreaterThan(0.04);
    assertThat(guessed).isGreaterThan(0.06).isGreaterThanOrEqualTo(known);
    assertThat(unknownKind).isGreaterThan(0.1);
  }

  /** Spread of ln λ by the model's form alone: the air's signal, and what the model leaves out. */
  private static double form(ModelUncertainty spreads, Setup setup, double opening) {
    Spreads form =
        new Spreads(
            0,
            0,
            0,
            spreads.air().value(),
            spreads.residual().value(),
            spreads.residualLength().value());
    MixtureModel model = MixtureModel.of(setup);
    ThrottleOpening throttle = ThrottleOpening.ofShare(opening);
    EngineSpeed speed = setup.engine().loadLine().at(throttle);
    return Calibration.untried(form).lnLambda(model, throttle, speed).deviation();
  }

  private static Setup ofUnknownKind() {
    return SETUP.withEngine(SETUP.engine().withInduction(Induction.unknown("not stated")));
  }
}
