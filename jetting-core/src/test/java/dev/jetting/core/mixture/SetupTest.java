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
        .isEqualTo(new Setup(engine, REFERENCE.setting(), REFERENCE.air(), REFERENCE.fuel()));
    assertThat(REFERENCE.withAir(air))
        .isEqualTo(new Setup(REFERENCE.engine(), REFERENCE.setting(), air, REFERENCE.fuel()));
    assertThat(REFERENCE.withFuel(Fuel.E10).fuel()).isEqualTo(Fuel.E10);
    assertThat(REFERENCE.withSetting(ReferenceSetup.airScrewSetting()).setting())
        .isEqualTo(ReferenceSetup.airScrewSetting());
  }
}
