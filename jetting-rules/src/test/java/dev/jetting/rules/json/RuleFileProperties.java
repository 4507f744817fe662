package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.arbitraries.SheetArbitraries;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of every rule file. */
class RuleFileProperties {

  @Property(tries = 200)
  void read_ofWritten_isEqual(@ForAll("files") RuleFile file) {
    RuleFile read = RuleFile.read(file.toJson());

    assertThat(read).isEqualTo(file);
    assertThat(read.toJson()).isEqualTo(file.toJson());
  }

  @Property(tries = 40)
  void rules_neverBreak_andTellFindingsInFull(
      @ForAll("files") RuleFile file, @ForAll("sheets") SetupSheet sheet) {
    AssessedSetting setting = AssessedSetting.of(sheet);

    for (Rule rule : file.rules()) {
      Outcome outcome = rule.evaluate(setting);

      assertThat(outcome.status()).as(outcome.reason()).isNotEqualTo(Status.BROKEN);
      assertThat(rule.evaluate(setting)).isEqualTo(outcome);
      assertThat(
              outcome.status() == Status.NOT_EVALUATED || outcome.status() == Status.NOT_APPLICABLE)
          .isEqualTo(!outcome.reason().isEmpty());
      for (Finding finding : outcome.findings()) {
        assertThat(finding.text())
            .doesNotContain("{measured}", "{limit}", "{measure}", "{throttle}")
            .doesNotContainPattern("\\R");
        assertThat(finding.margin().value()).isNotPositive();
        assertThat(finding.margin().unit()).isEqualTo(finding.measured().unit());
        assertThat(rule.band().contains(finding.band().from())).isTrue();
        assertThat(rule.band().contains(finding.band().to())).isTrue();
      }
    }
  }

  @Property(tries = 40)
  void not_ofNot_isTheSame_andNotIsTheOpposite(
      @ForAll("files") RuleFile file, @ForAll("sheets") SetupSheet sheet) {
    AssessedSetting setting = AssessedSetting.of(sheet);
    RuleForm form = file.form().rules().get(0);
    Outcome plain = judged(form, form.require(), setting);
    Outcome denied = judged(form, not(form.require()), setting);
    Outcome twice = judged(form, not(not(form.require())), setting);

    assertThat(twice).isEqualTo(plain);
    assertThat(denied.status())
        .isEqualTo(
            switch (plain.status()) {
              case PASSED -> Status.FAILED;
              case FAILED -> Status.PASSED;
              default -> plain.status();
            });
  }

  @Property(tries = 10)
  void report_withRulesFromAFile_readsBack(
      @ForAll("files") RuleFile file, @ForAll("sheets") SetupSheet sheet) {
    Report report =
        Rulebook.of(file.name(), file.version(), file.rules()).evaluate(AssessedSetting.of(sheet));

    assertThat(ReportJson.read(ReportJson.write(report))).isEqualTo(report);
  }

  @Property(tries = 200)
  void read_ofASpoiltDocument_isAFileOrRefused(
      @ForAll("files") RuleFile file,
      @ForAll("shares") double from,
      @ForAll("shares") double to,
      @ForAll("fragments") String fragment) {
    String json = file.toJson();
    int start = (int) (from * json.length());
    int end = Math.min(json.length(), start + (int) (to * 40));
    String spoilt = json.substring(0, start) + fragment + json.substring(end);

    try {
      RuleFile.read(spoilt);
    } catch (JsonInputException e) {
      assertThat(e.getMessage()).startsWith("$").doesNotContainPattern("\\R").hasSizeLessThan(700);
      assertThat(e.line()).isBetween(1, (int) spoilt.lines().count() + 1);
      assertThat(e.column()).isPositive();
    }
  }

  private static Outcome judged(RuleForm form, ConditionForm require, AssessedSetting setting) {
    RuleForm changed =
        new RuleForm(
            form.id(),
            form.formerIds(),
            form.title(),
            form.rationale(),
            form.severity(),
            form.tags(),
            form.link(),
            form.band(),
            form.when(),
            require,
            form.message(),
            form.remedy(),
            form.subject(),
            form.examples(),
            form.texts());
    return RuleFileReader.read(
            new RuleFileForm(RuleFileForm.FORMAT, RuleFileForm.VERSION, "n", "1", List.of(changed)))
        .rules()
        .get(0)
        .evaluate(setting);
  }

  private static ConditionForm not(ConditionForm form) {
    return RuleFileArbitraries.of(Optional.empty(), Optional.empty(), Optional.of(form));
  }

  @Provide
  Arbitrary<RuleFile> files() {
    return RuleFileArbitraries.files();
  }

  @Provide
  Arbitrary<SetupSheet> sheets() {
    return SheetArbitraries.sheets();
  }

  @Provide
  Arbitrary<Double> shares() {
    return Arbitraries.doubles().between(0, true, 1, false);
  }

  @Provide
  Arbitrary<String> fragments() {
    return Arbitraries.of(
        "",
        "{",
        "}",
        "[",
        "]",
        ",",
        ":",
        "\"",
        "\\",
        "null",
        "0",
        "-",
        "e9",
        "\u0000",
        "{limit}",
        "\"not\": {",
        "\"a\": 1,",
        "/*",
        "true",
        "\"mm\"");
  }
}
