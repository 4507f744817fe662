package dev.jetting.rules;

import com.google.common.collect.ImmutableSortedMap;
import com.google.common.collect.Maps;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a failed rule found.
 *
 * <p>The words are for people; programs read the id, the subject, the measures and the arguments of
 * the words, and never need to parse a text. {@link Wording} prints them in another language.
 *
 * @param subject path of the part or circuit it is about, such as {@code setting.needleJet}
 * @param measured what was measured
 * @param limit what it was held against
 * @param margin limit less measured, or measured less limit: below zero by how much the rule
 *     failed, in the unit of both
 * @param band where in the throttle range
 * @param worst the opening and the engine speed at which it is worst; empty of a rule that looks at
 *     no single opening, or does not say
 * @param words one sentence that says what is wrong, with the values that it shows
 * @param remedy what to change
 */
public record Finding(
    String subject,
    Measure measured,
    Measure limit,
    Measure margin,
    ThrottleBand band,
    Optional<Spot> worst,
    Message words,
    Remedy remedy) {

  /**
   * Checks for nulls.
   *
   * @param subject path of the part or circuit it is about, such as {@code setting.needleJet}
   * @param measured what was measured
   * @param limit what it was held against
   * @param margin limit less measured, or measured less limit: below zero by how much the rule
   *     failed, in the unit of both
   * @param band where in the throttle range
   * @param worst the opening and the engine speed at which it is worst; empty if not said
   * @param words one sentence that says what is wrong, with the values that it shows
   * @param remedy what to change
   */
  public Finding {
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(margin, "margin");
    Objects.requireNonNull(band, "band");
    Objects.requireNonNull(worst, "worst");
    Objects.requireNonNull(words, "words");
    Objects.requireNonNull(remedy, "remedy");
    PlainLine.checkLength("subject of a finding", subject);
    words.arguments().values().forEach(Finding::checkLength);
  }

  /** What is not made of names has a length of its own. */
  private static void checkLength(Argument value) {
    if (value instanceof Argument.Name || value instanceof Argument.Items) {
      PlainLine.checkLength("attribute of a finding", value.text());
    }
  }

  /**
   * This finding with another remedy.
   *
   * @param other what to change
   * @return the changed finding
   */
  public Finding withRemedy(Remedy other) {
    return new Finding(
        subject, measured, limit, margin, band, worst, words, Objects.requireNonNull(other));
  }

  /** {@return the sentence, with {@code {name}} for each attribute} */
  public String message() {
    return words.template();
  }

  /** {@return the values that the message shows, by name, in English} */
  public Map<String, String> attributes() {
    return ImmutableSortedMap.copyOf(Maps.transformValues(words.arguments(), Argument::text));
  }

  /** {@return the message with the attributes put in, in English} */
  public String text() {
    return words.text();
  }

  /**
   * How far beyond the limit the measured value is, as a share of the limit: what orders findings
   * of one severity.
   *
   * @return zero or more; 1 beyond a limit of zero, which nothing is a share of
   */
  public double excess() {
    double beyond = Math.max(0, -margin.value());
    double excess = beyond / Math.abs(limit.value());
    return Double.isFinite(excess) ? excess : Math.signum(beyond);
  }

  /**
   * A finding that something measured exceeds its limit.
   *
   * @param subject path of the part or circuit it is about
   * @param measured what was measured
   * @param limit the most allowed, in the same unit
   * @param band where in the throttle range
   * @return a builder for the texts
   * @throws IllegalArgumentException if what was measured is below the limit, or the units differ
   */
  public static Texts above(String subject, Measure measured, Measure limit, ThrottleBand band) {
    return of(beyond("most", Margin.atMost(subject, measured, limit, band)));
  }

  /**
   * A finding that something measured falls short of its limit.
   *
   * @param subject path of the part or circuit it is about
   * @param measured what was measured
   * @param limit the least allowed, in the same unit
   * @param band where in the throttle range
   * @return a builder for the texts
   * @throws IllegalArgumentException if what was measured is above the limit, or the units differ
   */
  public static Texts below(String subject, Measure measured, Measure limit, ThrottleBand band) {
    return of(beyond("least", Margin.atLeast(subject, measured, limit, band)));
  }

  /** What was measured and the limit may have changed places. On the limit a rule may fail. */
  private static Margin beyond(String bound, Margin margin) {
    if (margin.left().value() > 0) {
      throw new IllegalArgumentException(
          "finding that "
              + margin.measured()
              + " violates at "
              + bound
              + " "
              + margin.limit()
              + ": allowed what was measured, then a limit that it violates");
    }
    return margin;
  }

  static Texts of(Margin margin) {
    return new Texts(margin, Optional.empty(), ImmutableSortedMap.of());
  }

  /**
   * Where a finding is worst.
   *
   * @param throttle throttle opening
   * @param speed engine speed there: that of the level road, of a climb or of the overrun
   */
  public record Spot(ThrottleOpening throttle, EngineSpeed speed) {

    /**
     * Checks for nulls.
     *
     * @param throttle throttle opening
     * @param speed engine speed there
     */
    public Spot {
      Objects.requireNonNull(throttle, "throttle");
      Objects.requireNonNull(speed, "speed");
    }
  }

  /** The texts of a finding whose numbers are set. */
  public static final class Texts {
    private final Margin margin;
    private final Optional<Spot> worst;
    private final ImmutableSortedMap<String, Argument> arguments;

    private Texts(
        Margin margin, Optional<Spot> worst, ImmutableSortedMap<String, Argument> arguments) {
      this.margin = margin;
      this.worst = worst;
      this.arguments = arguments;
    }

    /**
     * States where it is worst, for programs that mark it in a chart.
     *
     * @param throttle throttle opening
     * @param speed engine speed there
     * @return these texts and the spot, instead of one stated before
     */
    public Texts worstAt(ThrottleOpening throttle, EngineSpeed speed) {
      return new Texts(margin, Optional.of(new Spot(throttle, speed)), arguments);
    }

    /**
     * States where it is worst: at an assessed opening, at the speed of the level road.
     *
     * @param point the point of the risk profile
     * @return these texts and the spot, instead of one stated before
     */
    public Texts worstAt(RiskPoint point) {
      return worstAt(point.mixture().throttle(), point.mixture().speed());
    }

    /**
     * Adds a value that the message shows, which every language prints in its own way.
     *
     * @param name its name
     * @param value its value
     * @return these texts and the value
     * @throws IllegalArgumentException if there is one of this name
     */
    public Texts with(String name, Argument value) {
      return new Texts(
          margin,
          worst,
          ImmutableSortedMap.<String, Argument>naturalOrder()
              .putAll(arguments)
              .put(name, value)
              .buildOrThrow());
    }

    /**
     * Adds a value that the message shows.
     *
     * @param name its name
     * @param value a number with its unit, rounded for people
     * @return these texts and the value
     * @throws IllegalArgumentException if there is one of this name
     */
    public Texts with(String name, Measure value) {
      return with(name, value.argument());
    }

    /**
     * Adds a value that the message shows as it is in every language.
     *
     * @param name its name
     * @param value its value, as the message shows it; text of its own, never a format
     * @return these texts and the value
     * @throws IllegalArgumentException if there is one of this name
     */
    public Texts with(String name, Object value) {
      return with(name, Argument.name(value.toString()));
    }

    /**
     * Completes the finding.
     *
     * @param message one sentence that says what is wrong, with {@code {name}} for each attribute
     * @param remedy what to do, where that is no change of a metering part
     * @return the finding
     */
    public Finding says(String message, String remedy) {
      return says(message, new Remedy.Advice(remedy));
    }

    /**
     * Completes the finding.
     *
     * @param message one sentence that says what is wrong, with {@code {name}} for each attribute
     * @param remedy what to change
     * @return the finding
     */
    public Finding says(String message, Remedy remedy) {
      return says(Message.plain(message), remedy);
    }

    /**
     * Completes the finding.
     *
     * @param message one sentence that says what is wrong; the values added before are put in
     * @param remedy what to change
     * @return the finding
     * @throws IllegalArgumentException if the message has a value of a name that was added before
     */
    public Finding says(Message message, Remedy remedy) {
      Message words = message;
      for (Map.Entry<String, Argument> argument : arguments.entrySet()) {
        words = words.with(argument.getKey(), argument.getValue());
      }
      return new Finding(
          margin.subject(),
          margin.measured(),
          margin.limit(),
          margin.left(),
          margin.band(),
          worst,
          words,
          remedy);
    }
  }
}
