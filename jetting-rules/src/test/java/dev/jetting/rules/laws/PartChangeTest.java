package dev.jetting.rules.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.laws.PartChange.Way;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartChangeTest {

  private static final Setting SETTING = TwoHundred.ALL_ROUND;

  private static PartChange customary(MeteringPart part, Way way) {
    return PartChange.customary(part, way, CustomarySteps.assumed());
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "PILOT_JET, RICHER, pilot 55 to pilot 57 (richer)",
        "PILOT_JET, LEANER, pilot 55 to pilot 53 (leaner)",
        "SCREW, RICHER, mixture screw 1½ turns out to mixture screw 1¾ turns out (richer)",
        "SCREW, LEANER, mixture screw 1½ turns out to mixture screw 1¼ turns out (leaner)",
        "CUTAWAY, RICHER, cutaway 40 to cutaway 35 (richer)",
        "CUTAWAY, LEANER, cutaway 40 to cutaway 45 (leaner)",
        "NEEDLE_JET, RICHER, needle jet 2.66 mm to needle jet 2.68 mm (richer)",
        "NEEDLE_JET, LEANER, needle jet 2.66 mm to needle jet 2.64 mm (leaner)",
        "NEEDLE_DIAMETER, RICHER, needle of 2.5 mm to needle of 2.49 mm (richer)",
        "NEEDLE_DIAMETER, LEANER, needle of 2.5 mm to needle of 2.51 mm (leaner)",
        "NEEDLE_TAPER, RICHER, first taper of 0.0226 mm/mm to first taper of 0.0236 mm/mm (richer)",
        "NEEDLE_TAPER, LEANER, first taper of 0.0226 mm/mm to first taper of 0.0216 mm/mm (leaner)",
        "CLIP, RICHER, clip 2 of 5 from top to clip 3 of 5 from top (richer)",
        "CLIP, LEANER, clip 2 of 5 from top to clip 1 of 5 from top (leaner)",
        "MAIN_JET, RICHER, main 126 to main 128 (richer)",
        "MAIN_JET, LEANER, main 126 to main 124 (leaner)",
      })
  void describe_ofACustomaryStep_tellsBothInTheTradesWords(
      MeteringPart part, Way way, String text) {
    assertThat(customary(part, way).describe(SETTING)).isEqualTo(text);
  }

  @Test
  void on_airScrew_turnsInForRicher() {
    Setting withAirScrew =
        Setting.builder()
            .carburettor(TwoHundred.carburettor(ScrewKind.AIR, 2.5))
            .intake(SETTING.intake())
            .pilotJet(SETTING.pilotJet())
            .screw(new Screw(ScrewKind.AIR, ScrewTurns.of(1.5)))
            .cutaway(SETTING.cutaway())
            .idleLift(SETTING.idleLift())
            .needleJet(SETTING.needleJet())
            .needle(SETTING.needle())
            .clip(SETTING.clip())
            .mainJet(SETTING.mainJet())
            .build();

    assertThat(customary(MeteringPart.SCREW, Way.RICHER).describe(withAirScrew))
        .isEqualTo("air screw 1½ turns out to air screw 1¼ turns out (richer)");
  }

  @Test
  void on_thinnerNeedle_isACopyThatSaysSo() {
    Setting after = customary(MeteringPart.NEEDLE_DIAMETER, Way.RICHER).on(SETTING).orElseThrow();

    assertThat(after.needle().id()).isEqualTo("needle, thinner by 0.01 mm");
    assertThat(after.needle().tapers()).isEqualTo(SETTING.needle().tapers());
    assertThat(after.withNeedle(SETTING.needle(), SETTING.clip())).isEqualTo(SETTING);
  }

  @Test
  void on_steeperTaper_changesEachTaper() {
    Needle two =
        Needle.builder()
            .id("two tapers")
            .cylinder(SETTING.needle().cylinder())
            .tapers(
                List.of(
                    new Taper(Length.ofMillimetres(4), 0.02),
                    new Taper(Length.ofMillimetres(20), 0.04)))
            .grooves(5)
            .groovePitch(SETTING.needle().groovePitch())
            .tip(SETTING.needle().tip())
            .build();

    Setting after =
        customary(MeteringPart.NEEDLE_TAPER, Way.RICHER)
            .on(SETTING.withNeedle(two, SETTING.clip()))
            .orElseThrow();

    assertThat(after.needle().tapers())
        .containsExactly(
            new Taper(Length.ofMillimetres(4), 0.021), new Taper(Length.ofMillimetres(20), 0.041));
  }

  @Test
  void on_whatCannotBeDone_isEmpty() {
    Setting top = SETTING.withClip(ClipPosition.fromTop(1, 5));
    Setting seated = SETTING.withScrew(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(0)));
    Setting out = SETTING.withScrew(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(3)));
    Needle straight =
        Needle.builder()
            .id("straight")
            .cylinder(SETTING.needle().cylinder())
            .tapers(List.of())
            .grooves(5)
            .groovePitch(SETTING.needle().groovePitch())
            .tip(SETTING.needle().tip())
            .build();

    assertThat(customary(MeteringPart.CLIP, Way.LEANER).on(top)).isEmpty();
    assertThat(new PartChange(MeteringPart.CLIP, Way.RICHER, 5).on(top)).isEmpty();
    assertThat(new PartChange(MeteringPart.CLIP, Way.RICHER, 0.5).on(top)).isEmpty();
    assertThat(customary(MeteringPart.SCREW, Way.LEANER).on(seated)).isEmpty();
    assertThat(customary(MeteringPart.SCREW, Way.RICHER).on(out)).isEmpty();
    assertThat(
            customary(MeteringPart.NEEDLE_TAPER, Way.RICHER)
                .on(SETTING.withNeedle(straight, SETTING.clip())))
        .isEmpty();
    assertThat(new PartChange(MeteringPart.NEEDLE_TAPER, Way.LEANER, 0.03).on(SETTING)).isEmpty();
    assertThat(new PartChange(MeteringPart.NEEDLE_DIAMETER, Way.LEANER, 0.2).on(SETTING)).isEmpty();
    assertThat(new PartChange(MeteringPart.NEEDLE_JET, Way.LEANER, 0.2).on(SETTING)).isEmpty();
    assertThat(new PartChange(MeteringPart.MAIN_JET, Way.LEANER, 1.26).on(SETTING)).isEmpty();
    assertThat(new PartChange(MeteringPart.PILOT_JET, Way.LEANER, 1).on(SETTING)).isEmpty();
    assertThat(new PartChange(MeteringPart.CUTAWAY, Way.RICHER, 5).on(SETTING)).isEmpty();
    assertThat(new PartChange(MeteringPart.CUTAWAY, Way.LEANER, 26).on(SETTING)).isEmpty();
  }

  @Test
  void describe_ofWhatCannotBeDone_tellsTheStep() {
    assertThat(new PartChange(MeteringPart.CLIP, Way.RICHER, 5).describe(SETTING))
        .isEqualTo("CLIP richer by 5 grooves");
  }

  @Test
  void of_aStepThatIsNone_isRefused() {
    for (double step : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new PartChange(MeteringPart.CLIP, Way.RICHER, step))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("step of CLIP")
          .hasMessageContaining("allowed a finite number above 0");
    }
  }
}
