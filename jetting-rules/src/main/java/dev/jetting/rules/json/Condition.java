package dev.jetting.rules.json;

import static java.util.stream.Collectors.joining;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Measure;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.Judgement.Violation;
import dev.jetting.rules.json.MeasureDefinition.Reading;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Argument;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A condition of a rule file over the assessed setting. */
sealed interface Condition {

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
  String words();

  /** All of some conditions. */
  record All(List<Condition> each) implements Condition {
    @Override
    public Judgement judge(AssessedSetting setting, boolean wanted) {
      List<Judgement> verdicts = each.stream().map(c -> c.judge(setting, wanted)).toList();
      return wanted ? Judgement.all(verdicts) : Judgement.any(verdicts);
    }

    @Override
    public String words() {
      return joined(each, " and ");
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
    public String words() {
      return joined(each, " or ");
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
    public String words() {
      return "not (" + condition.words() + ")";
    }

    @Override
    public Stream<Condition> leaves() {
      return condition.leaves();
    }
  }

  /** A text that is one of some. */
  record OneOf(MeasureDefinition.Word gauge, List<String> texts) implements Condition {
    @Override
    public Judgement judge(AssessedSetting setting, boolean wanted) {
      String text = gauge.text().apply(setting);
      boolean is = texts.contains(text);
      if (is == wanted) {
        return Judgement.HOLDS;
      }
      return Judgement.of(
          new Violation(
              gauge,
              Measure.ratio(1),
              Measure.ratio(0),
              true,
              span(setting),
              Argument.name(Quote.plain(text)),
              Argument.name((wanted ? "" : "not ") + Quote.listed(String.join(" or ", texts)))));
    }

    @Override
    public String words() {
      return gauge.words() + " is " + Quote.listed(String.join(" or ", texts));
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
        return Judgement.missing(source.gauge().name());
      }
      Optional<Double> held = limit.read(setting);
      if (held.isEmpty()) {
        return Judgement.missing(limit.missing());
      }
      double number = measured.get().number();
      boolean within = most ? number <= held.get() : number >= held.get();
      Dimension dimension = source.gauge().dimension();
      Violation violation =
          new Violation(
              source.gauge(),
              dimension.measure(number),
              dimension.measure(held.get()),
              most == wanted,
              measured.get().where(),
              dimension.value(number),
              dimension.value(held.get()));
      return within == wanted
          ? Judgement.holds(violation.margin(source.gauge().name()))
          : Judgement.of(violation);
    }

    @Override
    public String words() {
      String atWhat = limit.words(source.gauge().dimension());
      return source.words() + (most ? " at most " : " at least ") + atWhat;
    }
  }

  /**
   * A measure, and what to take of it.
   *
   * @param take what to take of a measure that has a number at each opening; not read of another
   * @param within where to take it; not read of another
   */
  record Source(MeasureDefinition.Numeric gauge, Take take, ThrottleBand within) {
    Optional<Reading> read(AssessedSetting setting) {
      if (gauge instanceof MeasureDefinition.Swept swept) {
        return swept.read(setting, take, within);
      }
      return ((MeasureDefinition.Plain) gauge)
          .number()
          .apply(setting)
          .map(n -> new Reading(n, span(setting)));
    }

    String words() {
      return gauge instanceof MeasureDefinition.Swept
          ? Enums.name(take) + " " + gauge.words() + " " + Source.words(within)
          : gauge.words();
    }

    private static String words(ThrottleBand band) {
      return band.equals(ThrottleBand.WHOLE)
          ? "at any throttle"
          : "from " + TradeStyle.throttle(band.from()) + " to " + TradeStyle.throttle(band.to());
    }
  }

  /** What a number is held against. */
  sealed interface Limit {
    Optional<Double> read(AssessedSetting setting);

    String missing();

    String words(Dimension dimension);
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
    public String words(Dimension dimension) {
      return dimension.shown(number);
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
      return source.gauge().name();
    }

    @Override
    public String words(Dimension dimension) {
      return (times == 1 ? "" : Dimension.RATIO.shown(times) + " times ") + source.words();
    }
  }

  /** The openings that the rule sees. */
  private static ThrottleBand span(AssessedSetting setting) {
    List<RiskPoint> points = setting.profile().points();
    return new ThrottleBand(
        points.get(0).mixture().throttle(), points.get(points.size() - 1).mixture().throttle());
  }

  private static String joined(List<Condition> each, String word) {
    return each.size() == 1
        ? each.get(0).words()
        : each.stream().map(Condition::words).collect(joining(word, "(", ")"));
  }
}
