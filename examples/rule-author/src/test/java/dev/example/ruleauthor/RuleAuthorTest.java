package dev.example.ruleauthor;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.air.Air;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import dev.jetting.rules.RulePack;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.RuleFile;
import dev.jetting.rules.json.RuleRemark;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.RuleCheck;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.JetBore;
import dev.jetting.units.Pressure;
import dev.jetting.units.Temperature;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class RuleAuthorTest {

  private static final Map<String, SetupSheet> SHEETS = Map.of("plain", LawKit.plainSheet());

  /** A limit or a factor of a rule, and not what an example says of it. */
  private static final Pattern LIMIT =
      Pattern.compile("\"(?:atMost|atLeast|times)\": \"?([0-9.]+)");

  private static List<RulePack> packs() {
    return RulePack.load(RuleAuthorTest.class.getClassLoader());
  }

  @Test
  void load_findsBothPacks_byTheirIdsAndNotAsTheModuleNamesThem() {
    assertThat(packs()).extracting(RulePack::id).containsExactly("kit", "winter");
  }

  @Test
  void bothPacks_standInOneRulebookWithTheStandardRules() {
    Rulebook all = StandardRulebook.rulebook().withPacks(packs());

    assertThat(all.rules())
        .hasSize(StandardRulebook.rulebook().rules().size() + 3)
        .extracting(Rule::id)
        .endsWith("kit-main-jet", "kit-pilot-jet", "winter-reserve");
    assertThat(all.version()).endsWith(" + kit 1 + winter 1");
  }

  @Test
  void winterReserve_passesABigMainJet_andFailsASmallOneInTheFrost() {
    Outcome small = judged("winter-reserve", 1.10);

    assertThat(judged("winter-reserve", 1.50).status()).isEqualTo(Status.PASSED);
    assertThat(small.status()).isEqualTo(Status.FAILED);
    assertThat(small.findings().get(0).text()).startsWith("With main 110 full throttle is at λ ");
  }

  @Test
  void kitMainJet_passesTheKitsBiggest_andFailsABiggerOne() {
    Outcome bigger = judged("kit-main-jet", 1.41);

    assertThat(judged("kit-main-jet", 1.40).status()).isEqualTo(Status.PASSED);
    assertThat(bigger.status()).isEqualTo(Status.FAILED);
    assertThat(bigger.findings().get(0).text())
        .isEqualTo("The main jet of 1.41 mm is bigger than the 1.40 mm of the kit.");
  }

  /** The biggest jet of the kit passes on its limit, the next one fails. */
  @Test
  void kitMainJet_checkedOnEditsOfThePlainSheet() {
    RuleCheck check =
        RuleCheck.of(
            Rulebook.of("test", "1", List.of())
                .withPacks(packs())
                .rule("kit-main-jet")
                .orElseThrow());

    check.edited("/setting/mainJet", "1.40 mm").passes().withMeasured(1.40).withLimit(1.40);
    check.edited("/setting/mainJet", "1.41 mm").failsOn("setting.mainJet").withLimit(1.40);
  }

  @Test
  void kitRules_keepTheExamplesThatTheyCarry() throws IOException {
    RuleFile file = RuleFile.read(kitRules());

    assertThat(file.check(SHEETS)).isEmpty();
    assertThat(file.review()).isEmpty();
  }

  /** One per cent up or down: an example finds a mistyped limit. */
  @Test
  void kitRules_withAnyLimitChanged_breakAnExample() throws IOException {
    List<MatchResult> limits = LIMIT.matcher(kitRules()).results().toList();

    assertThat(limits).hasSize(4);
    for (MatchResult limit : limits) {
      for (String factor : List.of("0.99", "1.01")) {
        String other = new BigDecimal(limit.group(1)).multiply(new BigDecimal(factor)).toString();
        String mutated =
            kitRules().substring(0, limit.start(1)) + other + kitRules().substring(limit.end(1));

        assertThat(RuleFile.read(mutated).check(SHEETS))
            .as("%s changed to %s", limit.group(), other)
            .extracting(RuleRemark::kind)
            .contains(RuleRemark.Kind.EXAMPLE_FAILS);
      }
    }
  }

  private static String kitRules() throws IOException {
    try (InputStream file = KitPack.class.getResourceAsStream("kit-rules.json")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static Outcome judged(String ruleId, double mainJet) {
    SetupSheet plain = LawKit.plainSheet();
    Air frost = Air.dry(Pressure.ofHectopascals(1030), Temperature.ofCelsius(-10));
    SetupSheet sheet =
        SetupSheet.builder()
            .title(plain.title())
            .setup(
                plain
                    .setup()
                    .withSetting(
                        plain.setup().setting().withMainJet(JetBore.ofMillimetres(mainJet))))
            .riding(
                Riding.builder()
                    .acceptedRisk(plain.riding().acceptedRisk())
                    .profile(plain.riding().profile())
                    .coldest(frost)
                    .hottest(plain.riding().hottest())
                    .build())
            .parts(plain.parts())
            .build();
    return Rulebook.of("test", "1", List.of())
        .withPacks(packs())
        .rule(ruleId)
        .orElseThrow()
        .evaluate(AssessedSetting.of(sheet));
  }
}
