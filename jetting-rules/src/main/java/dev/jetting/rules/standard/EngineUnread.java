package dev.jetting.rules.standard;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;

/** A changed engine has to be read before it is trusted. */
final class EngineUnread {

  static final Rule RULE =
      RulePages.draft("engine-unread", "change")
          .title("Nothing read on the engine since it was changed")
          .rationale(
              "A bigger main jet is where to start on a changed engine, not where to end. How it"
                  + " breathes, nobody knows before it is read: full throttle first, then the rest,"
                  + " from the rich side.")
          .judging(EngineUnread::judge)
          .when(
              setting -> setting.sheet().provenance().namesEngine(),
              "the engine on which the setting was proven is unknown");

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
            "The engine was changed and nobody has read it since: the lean risk is that of an"
                + " engine that nobody knows.",
            "Read the plug after full throttle first, in short runs, then the needle, then the"
                + " pilot. Go leaner only after a reading. Then write down this engine and what was"
                + " read as the new proof.");
  }
}
