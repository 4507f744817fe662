package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.json.Judgement.Violation;
import dev.jetting.units.TradeStyle;
import java.util.Map;
import java.util.Optional;

/**
 * The judge of a rule that came from a file.
 *
 * @param when where the rule has something to say
 * @param require what must hold there
 * @param subject what the rule is about; the measure that failed if empty
 */
record FileRule(
    Optional<Condition> when,
    Condition require,
    Template message,
    Template remedy,
    Optional<String> subject) {

  Outcome judge(AssessedSetting setting) {
    if (when.isPresent()) {
      Judgement applies = when.get().judge(setting, true);
      if (applies.fails()) {
        return Outcome.notApplicable("only where " + Quote.listed(when.get().words()));
      }
      if (!applies.holds()) {
        return open(applies);
      }
    }
    Judgement verdict = require.judge(setting, true);
    return verdict.missing().isEmpty()
        ? Outcome.of(
            verdict.violations().stream().map(this::finding).distinct().toList(),
            verdict.margin().stream().map(this::renamed).toList())
        : open(verdict);
  }

  private Margin renamed(Margin margin) {
    return new Margin(
        subject.orElse(margin.subject()),
        margin.measured(),
        margin.limit(),
        margin.left(),
        margin.band());
  }

  private static Outcome open(Judgement verdict) {
    return Outcome.notEvaluated(String.join(", ", verdict.missing()));
  }

  private Finding finding(Violation violation) {
    Map<String, String> values =
        ImmutableMap.of(
            "limit", violation.limitText(),
            "measure", violation.gauge().words(),
            "measured", violation.measuredText(),
            "throttle", throttle(violation));
    Finding.Texts texts = violation.finding(subject.orElse(violation.gauge().name()));
    for (Map.Entry<String, String> value : values.entrySet()) {
      texts = texts.with(value.getKey(), value.getValue());
    }
    return texts.says(message.text(), remedy.filled(values));
  }

  private static String throttle(Violation violation) {
    String from = TradeStyle.throttle(violation.where().from());
    String to = TradeStyle.throttle(violation.where().to());
    return from.equals(to) ? from : from + " to " + to;
  }
}
