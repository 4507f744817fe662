package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.Judgement.Violation;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.Map;
import java.util.Optional;

/**
 * The judge of a rule that came from a file.
 *
 * @param id id of the rule, from which the keys of its texts are made
 * @param when where the rule has something to say
 * @param require what must hold there
 * @param subject what the rule is about; the measure that failed if empty
 */
record FileRule(
    String id,
    Optional<Condition> when,
    Condition require,
    Template message,
    Template remedy,
    Optional<String> subject) {

  Outcome judge(AssessedSetting setting) {
    if (when.isPresent()) {
      Judgement applies = when.get().judge(setting, true);
      if (applies.fails()) {
        return Outcome.notApplicable(onlyWhere(when.get().words()));
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

  private static Message onlyWhere(Message condition) {
    String text = condition.text();
    return Message.of("condition.only-where")
        .with(
            "condition",
            text.length() <= Condition.LONGEST_WORDS
                ? Argument.words(condition)
                : Argument.name(Quote.listed(text)));
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
    Map<String, Argument> values =
        ImmutableMap.of(
            "limit", violation.limitShown(),
            "measure", violation.definition().named(),
            "measured", violation.measuredShown(),
            "throttle", throttle(violation.where()));
    Finding.Texts texts = violation.finding(subject.orElse(violation.definition().name()));
    Message advice = Message.of(key(id, "remedy"), remedy.text());
    for (Map.Entry<String, Argument> value : values.entrySet()) {
      texts = texts.with(value.getKey(), value.getValue());
      advice = advice.with(value.getKey(), value.getValue());
    }
    return texts.says(Message.of(key(id, "finding"), message.text()), new Remedy.Advice(advice));
  }

  /** The key of one of a rule's texts. */
  static String key(String id, String text) {
    return "rule." + id + "." + text;
  }

  private static Argument throttle(ThrottleBand where) {
    Argument from = Argument.throttle(where.from());
    return where.from().equals(where.to())
        ? from
        : Argument.words(
            Message.of("throttle.between")
                .with("from", from)
                .with("to", Argument.throttle(where.to())));
  }
}
