package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SettingDifference.Part;
import dev.jetting.rules.SettingDifference.PartChange;
import dev.jetting.rules.risk.ProfileDifference;
import dev.jetting.rules.risk.ProfileDifference.Row;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SettingDifferenceTest {

  private static final Setting SETTING = TwoHundred.ALL_ROUND;
  private static final AssessedSetting BEFORE = assessed(SETTING);
  private static final SettingDifference SMALLER_MAIN =
      SettingDifference.from(BEFORE).to(assessed(SETTING.withMainJet(JetBore.ofMillimetres(1))));

  private static AssessedSetting assessed(Setting setting) {
    return AssessedSetting.of(TwoHundred.sheet(TwoHundred.STANDARD, setting));
  }

  @Test
  void parts_areThoseThatDiffer_withBeforeAndAfter() {
    assertThat(SMALLER_MAIN.parts()).extracting(PartChange::part).containsExactly(Part.MAIN_JET);
    PartChange main = SMALLER_MAIN.parts().get(0);
    assertThat(main.after().text()).isEqualTo("main 100");
    assertThat(main.message().text()).isEqualTo("main 100 in place of " + main.before().text());
  }

  @Test
  void part_isThereForEachComponentOfASetting() {
    assertThat(Part.values())
        .hasSameSizeAs(Setting.class.getRecordComponents())
        .extracting(part -> part.name().replace("_", "").toLowerCase(Locale.ROOT))
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(Setting.class.getRecordComponents())
                .map(RecordComponent::getName)
                .map(name -> name.equals("cutaway") ? "slide" : name)
                .map(name -> name.toLowerCase(Locale.ROOT))
                .toList());
  }

  /** Common practice, no source: a smaller main jet is leaner, most at full throttle. */
  @Test
  void mixture_ofASmallerMainJet_isLeanerMostAtTheTop() {
    Row most = SMALLER_MAIN.mixture().mostLeaner().orElseThrow();
    assertThat(most.throttle().share()).isGreaterThan(0.7);
    assertThat(most.lnLambdaChange())
        .isPositive()
        .isEqualTo(StrictMath.log(most.after().lambda().value() / most.before().lambda().value()));
    assertThat(most.after().leanRisk()).isGreaterThan(most.before().leanRisk());
    assertThat(SMALLER_MAIN.worstBefore()).isEqualTo(BEFORE.worst());
  }

  @Test
  void rows_areTheAssessedPoints() {
    List<RiskPoint> points = BEFORE.profile().points();
    List<Row> rows = SMALLER_MAIN.mixture().rows();
    assertThat(rows).hasSameSizeAs(points);
    for (int i = 0; i < rows.size(); i++) {
      assertThat(rows.get(i).throttle()).isEqualTo(points.get(i).mixture().throttle());
      assertThat(rows.get(i).before())
          .isEqualTo(
              new ProfileDifference.Mixture(points.get(i).lambda(), points.get(i).leanRisk()));
    }
  }

  @Test
  void sameSetting_differsInNothing() {
    SettingDifference none = SettingDifference.from(BEFORE).to(BEFORE);
    assertThat(none.parts()).isEmpty();
    assertThat(none.mixture().mostLeaner()).isEmpty();
    assertThat(none.mixture().mostRicher()).isEmpty();
    assertThat(none.toString())
        .matches("The same parts\\.\nThe highest lean risk over all days stays .* %\\.");
  }

  @Test
  void text_inEachLanguage() {
    assertThat(SMALLER_MAIN.toString())
        .matches(
            "main 100 in place of main \\d+\n"
                + "(λ falls most at .*\\.\n)?"
                + "λ rises most at .* throttle, by \\d+ %\\.\n"
                + "The highest lean risk over all days goes from .* to .*\\.");
    assertThat(SMALLER_MAIN.text(Wording.of(Locale.GERMAN)))
        .contains("Hauptdüse 100 statt Hauptdüse ", "Höchstes Magerrisiko an allen Tagen: von ");
    assertThat(SMALLER_MAIN.text(Wording.of(Locale.ITALIAN)))
        .contains(" invece di ", "Il rischio di magro più alto in tutti i giorni passa da ");
  }

  @Test
  void text_ofOtherThingsThanJets_namesThem() {
    FloatLevel level = FloatLevel.ofMillimetres(20);
    AssessedSetting other =
        assessed(
            SETTING.toBuilder()
                .intake(TwoHundred.FILTER)
                .idleLift(Length.ofMillimetres(0.75))
                .floats(Optional.of(Floats.builder().set(level).nominal(level).build()))
                .needle(
                    SETTING.needle().toBuilder()
                        .tip(Length.ofMillimetres(SETTING.needle().tip().millimetres() + 1))
                        .build())
                .build());
    assertThat(SettingDifference.from(BEFORE).to(other).toString())
        .contains(
            TwoHundred.FILTER.id() + " in place of " + SETTING.intake().id(),
            "idle lift 0.75 mm in place of idle lift ",
            SETTING.needle().id() + " with other measures",
            "floats at 20 mm where 20 mm is meant in place of unknown float level");
  }

  @Test
  void csv_hasARowForEachOpening() {
    assertThat(SMALLER_MAIN.csv())
        .startsWith(ProfileDifference.CSV_HEADER + "\n0,")
        .hasLineCount(AssessedSetting.openings().size() + 1);
    assertThat(SMALLER_MAIN.csv().lines()).allMatch(line -> line.split(",").length == 6);
  }

  @Test
  void settingsAssessedAtOtherOpenings_areRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> SettingDifference.from(BEFORE).to(BEFORE.within(ThrottleBand.eighths(4, 5))))
        .withMessageStartingWith("throttle openings [0.5")
        .withMessageContaining("after a change: allowed those before it, [0, ");
  }
}
