package dev.jetting.rules.json;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Measure;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.Judgement.Violation;
import dev.jetting.rules.json.MeasureDefinition.Reading;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A condition of a rule file over the assessed setting. */
sealed interface Condition {

  /** Longer words of a condition swamp what they stand in. */
  int LONGEST_WORDS = 200;

  /** More texts than these are listed as they stand: words for each would cost too much. */
  int MOST_WORDED = 10;

  /** What shows a condition puts some words around it, and a message has its limit. */
  int DEEPEST_WORDS = 6;

  /**
   * Holds the condition, or what it denies, against a setting. To deny is left to the leaves, so
   * that a condition denied twice finds what it finds itself.
   *
   * @param wanted whether it should hold
   */
  Judgement judge(AssessedSetting setting, boolean wanted);

  /** The conditions on a measure that it is made from. */
  default Stream<Condition> leaves() {
    return Stream.of(this);
  }

  /** The condition in words, without the measures' numbers on any setting. */
  Message words();

  /** All of some conditions. */
  record All(List<Condition> each) implements Condition {
    @Override
    public Judgement judge(AssessedSetting setting, boolean wanted) {
      List<Judgement> verdicts = each.stream().map(c -> c.judge(setting, wanted)).toList();
      return wanted ? Judgement.all(verdicts) : Judgement.any(verdicts);
    }

    @Override
    public Message words() {
      return joined(each, "condition.and");
    }

    @Override
    public Stream<Condition> leaves() {
      return each.stream().flatMap(Condition::leaves);
    }
  }

  /** Any of some conditions. */
  record Any(List<Condition> each) implements Condition {
    @Override
    public Judgement judge(AssessedSetting setting, boolean wanted) {
      List<Judgement> verdicts = each.stream().map(c -> c.judge(setting, wanted)).toList();
      return wanted ? Judgement.any(verdicts) : Judgement.all(verdicts);
    }

    @Override
    public Message words() {
      return joined(each, "condition.or");
    }

    @Override
    public Stream<Condition> leaves() {
      return each.stream().flatMap(Condition::leaves);
    }
  }

  /** What another condition denies. */
  record Not(Condition condition) implements Condition {
    @Override
    public Judgement judge(AssessedSetting setting, boolean wanted) {
      return condition.judge(setting, !wanted);
    }

    @Override
    public Message words() {
      return Message.of("condition.not").with("condition", part(condition.words()));
    }

    @Override
    public Stream<Condition> leaves() {
      return condition.leaves();
    }
  }

  /** A text that is one of some. */
  record OneOf(MeasureDefinition.Word definition, List<String> texts) implements Condition {
    @Override
    public Judgement judge(AssessedSetting setting, boolean wanted) {
      String text = definition.text().apply(setting);
      boolean is = texts.contains(text);
      if (is == wanted) {
        return Judgement.HOLDS;
      }
      return Judgement.of(
          new Violation(
              definition,
              Measure.ratio(1),
              Measure.ratio(0),
              true,
              span(setting),
              Argument.name(Quote.plain(text)),
              wanted
                  ? shown()
                  : Argument.words(Message.of("condition.other").with("texts", shown()))));
    }

    @Override
    public Message words() {
      return Message.of("condition.is").with("measure", definition.named()).with("texts", shown());
    }

    private Argument shown() {
      if (texts.size() > MOST_WORDED) {
        return Argument.name(Quote.listed(String.join(", ", texts)));
      }
      Message all =
          chain(
              "condition.or",
              texts.stream()
                  .map(
                      text ->
                          Message.plain("{text}").with("text", Argument.name(Quote.plain(text))))
                  .toList());
      return all.text().length() <= LONGEST_WORDS
          ? Argument.words(all)
          : Argument.name(Quote.listed(String.join(", ", texts)));
    }
  }

  /**
   * A number within a limit, the limit included.
   *
   * @param most whether the limit is the most allowed; else it is the least
   */
  record Bound(Source source, boolean most, Limit limit) implements Condition {
    @Override
    public Judgement judge(AssessedSetting setting, boolean wanted) {
      Optional<Reading> measured = source.read(setting);
      if (measured.isEmpty()) {
        return Judgement.missing(source.definition().name());
      }
      Optional<Double> held = limit.read(setting);
      if (held.isEmpty()) {
        return Judgement.missing(limit.missing());
      }
      double number = measured.get().number();
      boolean within = most ? number <= held.get() : number >= held.get();
      Dimension dimension = source.definition().dimension();
      Violation violation =
          new Violation(
              source.definition(),
              dimension.measure(number),
              dimension.measure(held.get()),
              most == wanted,
              measured.get().where(),
              dimension.value(number),
              dimension.value(held.get()));
      return within == wanted
          ? Judgement.holds(violation.margin(source.definition().name()))
          : Judgement.of(violation);
    }

    @Override
    public Message words() {
      return Message.of(most ? "condition.at-most" : "condition.at-least")
          .with("measure", source.words())
          .with("limit", limit.words(source.definition().dimension()));
    }
  }

  /**
   * A measure, and what to take of it.
   *
   * @param take what to take of a measure that has a number at each opening; not read of another
   * @param within where to take it; not read of another
   */
  record Source(MeasureDefinition.Numeric definition, Take take, ThrottleBand within) {
    Optional<Reading> read(AssessedSetting setting) {
      if (definition instanceof MeasureDefinition.Swept swept) {
        return swept.read(setting, take, within);
      }
      return ((MeasureDefinition.Plain) definition)
          .number()
          .apply(setting)
          .map(n -> new Reading(n, span(setting)));
    }

    Argument words() {
      return definition instanceof MeasureDefinition.Swept
          ? Argument.words(
              Message.of("condition." + Enums.name(take))
                  .with("measure", definition.named())
                  .with("throttle", words(within)))
          : definition.named();
    }

    private static Argument words(ThrottleBand band) {
      return band.equals(ThrottleBand.WHOLE)
          ? Argument.word("condition.anywhere")
          : Argument.words(
              Message.of("condition.within")
                  .with("from", Argument.throttle(band.from()))
                  .with("to", Argument.throttle(band.to())));
    }
  }

  /** What a number is held against. */
  sealed interface Limit {
    Optional<Double> read(AssessedSetting setting);

    String missing();

    Argument words(Dimension dimension);
  }

  /** A stated number. */
  record Fixed(double number) implements Limit {
    @Override
    public Optional<Double> read(AssessedSetting setting) {
      return Optional.of(number);
    }

    @Override
    public String missing() {
      return "";
    }

    @Override
    public Argument words(Dimension dimension) {
      return dimension.value(number);
    }
  }

  /** Another measure, with a factor. */
  record Scaled(Source source, double times) implements Limit {
    @Override
    public Optional<Double> read(AssessedSetting setting) {
      return source.read(setting).map(reading -> reading.number() * times);
    }

    @Override
    public String missing() {
      return source.definition().name();
    }

    @Override
    public Argument words(Dimension dimension) {
      return times == 1
          ? source.words()
          : Argument.words(
              Message.of("condition.times")
                  .with("factor", Dimension.RATIO.value(times))
                  .with("measure", source.words()));
    }
  }

  /** The openings that the rule sees. */
  private static ThrottleBand span(AssessedSetting setting) {
    List<RiskPoint> points = setting.profile().points();
    return new ThrottleBand(
        points.get(0).mixture().throttle(), points.get(points.size() - 1).mixture().throttle());
  }

  private static Message joined(List<Condition> each, String key) {
    if (each.size() == 1) {
      return each.get(0).words();
    }
    Message all = chain(key, each.stream().map(Condition::words).toList());
    return Message.of("condition.group").with("condition", part(all));
  }

  /** Joined in halves: words in others may stand only some levels deep. */
  private static Message chain(String key, List<Message> each) {
    if (each.size() == 1) {
      return each.get(0);
    }
    int half = (each.size() + 1) / 2;
    return Message.of(key)
        .with("first", part(chain(key, each.subList(0, half))))
        .with("next", part(chain(key, each.subList(half, each.size()))));
  }

  /** Words of words; their English, shortened, where they are too long or stand too deep. */
  private static Argument part(Message words) {
    String text = words.text();
    return text.length() <= LONGEST_WORDS && depth(words) < DEEPEST_WORDS
        ? Argument.words(words)
        : Argument.name(Quote.listed(text));
  }

  private static int depth(Message words) {
    return words.arguments().values().stream()
        .mapToInt(value -> value instanceof Argument.Words inner ? 1 + depth(inner.message()) : 0)
        .max()
        .orElse(0);
  }
}
