package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.SetupArbitraries;
import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** The table against the model, of one setting after the other. */
@Domain(SetupArbitraries.class)
@Domain(DomainContext.Global.class)
class MixtureTableProperties {

  private static final List<ThrottleOpening> OPENINGS = MixtureModel.evenOpenings(5);
  private static final List<Double> AIR_CASES = List.of(-0.07, 0.0, 0.2);

  @Property(tries = 200)
  void numbers_areThoseOfTheModelToTheLastBit(@ForAll Setup setup) {
    Setting s = setup.setting();
    MixtureModel model = MixtureModel.of(setup);
    MixtureTable table = MixtureTable.of(setup, OPENINGS, AIR_CASES);
    MixtureTable.Pilot pilot = table.pilot(s.pilotJet(), s.screw().turns());
    MixtureTable.Ring ring = table.ring(s.needleJet(), s.needle(), s.clip());
    MixtureTable.MainJet main = table.mainJet(s.mainJet());
    MixtureTable.Local local = new MixtureTable.Local();

    assertThat(table.size()).isEqualTo(5);
    assertThat(pilot.overrunLambda()).isEqualTo(model.overrun().lambda().value());
    for (int i = 0; i < table.size(); i++) {
      ThrottleOpening throttle = OPENINGS.get(i);
      EngineSpeed speed = setup.engine().loadLine().at(throttle);
      double lambda = model.at(throttle).lambda().value();
      double fuel = table.mainFuel(ring, main, i) + pilot.fuel(i);
      assertThat(table.lambda(i, table.mainFuel(ring, main, i), pilot.fuel(i))).isEqualTo(lambda);
      if (lambda < MixturePoint.LEANEST.value()) {
        assertThat(table.fuelAtOne(i) / fuel).isCloseTo(lambda, within(1e-12 * lambda));
      }

      for (int c = 0; c < AIR_CASES.size(); c++) {
        MixtureModel there = model.differing(ErrorSource.AIR, AIR_CASES.get(c));
        table.local(pilot, ring, main, i, c, local);
        assertThat(
                new FuelSensitivities(
                    local.lnLambda(), local.pilot(), local.needle(), local.main(), local.sizes()))
            .isEqualTo(there.fuelSensitivities(throttle, speed));
      }
    }
  }

  /** Which way an engine is said to differ must not matter either. */
  @Property(tries = 100)
  void engineThatDiffers_isThatOfTheModel(
      @ForAll Setup setup,
      @ForAll ErrorSource source,
      @ForAll @DoubleRange(min = -0.5, max = 0.5) double z) {
    Setting s = setup.setting();
    MixtureModel differing = MixtureModel.of(setup).differing(source, z);
    MixtureTable table = MixtureTable.of(setup, OPENINGS, Map.of(source, z));
    MixtureTable.Pilot pilot = table.pilot(s.pilotJet(), s.screw().turns());
    MixtureTable.Ring ring = table.ring(s.needleJet(), s.needle(), s.clip());
    MixtureTable.MainJet jet = table.mainJet(s.mainJet());
    for (int i = 0; i < table.size(); i++) {
      assertThat(table.lambda(i, table.mainFuel(ring, jet, i), pilot.fuel(i)))
          .as("at %s", OPENINGS.get(i))
          .isEqualTo(differing.at(OPENINGS.get(i)).lambda().value());
    }
    assertThat(pilot.overrunLambda()).isEqualTo(differing.overrun().lambda().value());
  }
}
