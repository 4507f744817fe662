package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.core.air.Air;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** The same question has the same answer, bit by bit and letter by letter. */
class DeterminismTest {

  private static final Setup SETUP =
      ReferenceSetup.setup()
          .withAir(
              Air.of(
                  Pressure.ofPascals(91_234.5),
                  Temperature.ofCelsius(27.3),
                  RelativeHumidity.ofShare(0.61)))
          .withFuel(Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(33)));

  @Test
  void answers_areTheSameFromManyThreadsAtOnce() throws Exception {
    MixtureModel shared = MixtureModel.of(SETUP);
    List<String> expected = answers(MixtureModel.of(SETUP));
    List<Callable<List<String>>> tasks = new ArrayList<>();
    for (int i = 0; i < 32; i++) {
      boolean share = i % 2 == 0;
      tasks.add(() -> answers(share ? shared : MixtureModel.of(SETUP)));
    }
    ExecutorService pool = Executors.newFixedThreadPool(8);
    try {
      for (Future<List<String>> answer : pool.invokeAll(tasks)) {
        assertThat(answer.get()).isEqualTo(expected);
      }
    } finally {
      pool.shutdown();
    }
  }

  @Test
  void answers_areTheSameInOtherLocalesAndTimeZones() {
    List<String> expected = answers(MixtureModel.of(SETUP));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : List.of("tr-TR", "de-DE", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        assertThat(answers(MixtureModel.of(SETUP))).as(tag).isEqualTo(expected);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  /** Everything the model says over the range, numbers by their bits. */
  private static List<String> answers(MixtureModel model) {
    List<String> all = new ArrayList<>();
    for (ThrottleOpening throttle : MixtureModel.evenOpenings(9)) {
      MixturePoint point = model.at(throttle);
      EngineSpeed speed = point.speed();
      all.add(bits(point.lambda().value()) + bits(point.chargeShare()) + point.lambda());
      all.add(bits(point.mainFuelFlow().gramsPerSecond()) + point.depression());
      model
          .effects(throttle, speed, CustomarySteps.assumed())
          .forEach(e -> all.add(e.part() + bits(e.richer()) + bits(e.leaner())));
      Sensitivities slopes = model.sensitivities(throttle, speed);
      for (ErrorSource source : ErrorSource.values()) {
        all.add(source + bits(slopes.to(source)));
      }
    }
    all.add(bits(model.overrun().lambda().value()));
    all.add(CustomarySteps.assumed().toString());
    all.add(SETUP.setting().carburettor().flow().nozzleOpen().toString());
    return all;
  }

  private static String bits(double value) {
    return Long.toHexString(Double.doubleToRawLongBits(value)) + " ";
  }
}
