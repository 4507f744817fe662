package dev.jetting.rules.risk;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.Sensitivities;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.typical.Cooling;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.core.typical.StateOfTune;
import dev.jetting.core.typical.TypicalEngine;
import dev.jetting.core.typical.WrongGuess;
import dev.jetting.rules.TwoHundred;
import dev.jetting.units.Displacement;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.NotEmpty;

class GuessSpreadProperties {

  @Property(tries = 50)
  void band_isNowhereNarrowerThanAllPlausibleErrorsTogether(
      @ForAll @DoubleRange(min = 100, max = 300) double cubicCentimetres,
      @ForAll StateOfTune tune,
      @ForAll @NotEmpty Set<MachineValue> guessed) {
    Setup setup =
        TwoHundred.sheet(
                TypicalEngine.builder()
                    .displacement(Displacement.ofCubicCentimetres(cubicCentimetres))
                    .tune(tune)
                    .cooling(Cooling.FAN)
                    .induction(InductionKind.PISTON_PORT)
                    .build()
                    .engine(),
                TwoHundred.ALL_ROUND)
            .setup();
    GuessSpread spread = GuessSpread.of(setup, guessed);
    List<WrongGuess> guesses = WrongGuess.of(setup, guessed, GuessSpread.openings());
    List<Sensitivities> sensitivities = GuessSpread.sensitivities(setup);
    for (int i = 0; i < sensitivities.size(); i++) {
      double together = 0;
      for (WrongGuess guess : guesses) {
        double change = guess.changeAt(GuessSpread.openings().get(i));
        together += change * change;
      }
      double band = spread.residual() * spread.residual();
      for (ErrorSource source : ErrorSource.values()) {
        double part = sensitivities.get(i).to(source) * spread.of(source);
        band += part * part;
      }
      assertThat(band).isGreaterThanOrEqualTo(together * (1 - 1e-12));
    }
  }
}
