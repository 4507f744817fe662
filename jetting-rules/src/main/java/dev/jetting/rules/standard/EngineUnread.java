package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Message;

/** A changed engine has to be read before it is trusted. */
final class EngineUnread {

  static final Rule RULE =
      RulePages.draft("engine-unread", "change")
          .judging(EngineUnread::judge)
          .when(
              setting -> setting.sheet().provenance().namesEngine(),
              Message.of("rule.engine-change.unknown"));

  private EngineUnread() {}

  private static Outcome judge(AssessedSetting setting) {
    return setting.sheet().provenance().isVoidOn(setting.setup().engine())
        ? Outcome.failed(finding())
        : Outcome.passed();
  }

  private static Finding finding() {
    return Finding.below(
            "engine", new Measure(0, "readings"), new Measure(1, "readings"), ThrottleBand.WHOLE)
        .says(
            Message.of("rule.engine-unread.finding"),
            new Remedy.Advice(Message.of("rule.engine-unread.remedy")));
  }
}
