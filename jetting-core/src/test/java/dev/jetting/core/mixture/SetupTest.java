package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.fuel.Fuel;
import org.junit.jupiter.api.Test;

class SetupTest {

  private static final Setup REFERENCE = ReferenceSetup.setup();

  @Test
  void with_changesOnePart() {
    var engine = REFERENCE.engine().withExhaust(Exhaust.reference("another"));
    var air = ReferenceSetup.air(300);

    assertThat(REFERENCE.withEngine(engine))
        .isEqualTo(
            Setup.builder()
                .engine(engine)
                .setting(REFERENCE.setting())
                .air(REFERENCE.air())
                .fuel(REFERENCE.fuel())
                .build());
    assertThat(REFERENCE.withAir(air))
        .isEqualTo(
            Setup.builder()
                .engine(REFERENCE.engine())
                .setting(REFERENCE.setting())
                .air(air)
                .fuel(REFERENCE.fuel())
                .build());
    assertThat(REFERENCE.withFuel(Fuel.E10).fuel()).isEqualTo(Fuel.E10);
    assertThat(REFERENCE.withSetting(ReferenceSetup.airScrewSetting()).setting())
        .isEqualTo(ReferenceSetup.airScrewSetting());
  }
}
