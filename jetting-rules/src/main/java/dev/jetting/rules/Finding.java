package dev.jetting.rules;

import com.google.common.collect.ImmutableSortedMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a failed rule found.
 *
 * <p>The message is for people; programs read the id, the subject, the measures and the attributes,
 * and never need to parse it.
 *
 * @param subject path of the part or circuit it is about, such as {@code setting.needleJet}
 * @param measured what was measured
 * @param limit what it was held against
 * @param margin limit less measured, or measured less limit: below zero by how much the rule
 *     failed, in the unit of both
 * @param band where in the throttle range
 * @param message one sentence that says what is wrong, with {@code {name}} for each attribute
 * @param attributes the values that the message shows, by name
 * @param remedy what to change
 */
public record Finding(
    String subject,
    Measure measured,
    Measure limit,
    Measure margin,
    ThrottleBand band,
    String message,
    Map<String, String> attributes,
    Remedy remedy) {

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z]+)}");

  /**
   * Copies the attributes, in the order of their names.
   *
   * @param subject path of the part or circuit it is about, such as {@code setting.needleJet}
   * @param measured what was measured
   * @param limit what it was held against
   * @param margin limit less measured, or measured less limit: below zero by how much the rule
   *     failed, in the unit of both
   * @param band where in the throttle range
   * @param message one sentence that says what is wrong, with {@code {name}} for each attribute
   * @param attributes the values that the message shows, by name
   * @param remedy what to change
   */
  public Finding {
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(margin, "margin");
    Objects.requireNonNull(band, "band");
    Objects.requireNonNull(message, "message");
    Objects.requireNonNull(remedy, "remedy");
    PlainLine.checkLength("subject of a finding", subject);
    PlainLine.checkLength("message of a finding", message);
    attributes = ImmutableSortedMap.copyOf(attributes);
    attributes.values().forEach(value -> PlainLine.checkLength("attribute of a finding", value));
  }

  /**
   * This finding with another remedy.
   *
   * @param other what to change
   * @return the changed finding
   */
  public Finding withRemedy(Remedy other) {
    return new Finding(
        subject, measured, limit, margin, band, message, attributes, Objects.requireNonNull(other));
  }

  /** {@return the message with the attributes put in} */
  public String text() {
    return PLACEHOLDER
        .matcher(message)
        .replaceAll(
            match ->
                Matcher.quoteReplacement(attributes.getOrDefault(match.group(1), match.group())));
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
   */
  public static Texts above(String subject, Measure measured, Measure limit, ThrottleBand band) {
    return of(Margin.atMost(subject, measured, limit, band));
  }

  /**
   * A finding that something measured falls short of its limit.
   *
   * @param subject path of the part or circuit it is about
   * @param measured what was measured
   * @param limit the least allowed, in the same unit
   * @param band where in the throttle range
   * @return a builder for the texts
   */
  public static Texts below(String subject, Measure measured, Measure limit, ThrottleBand band) {
    return of(Margin.atLeast(subject, measured, limit, band));
  }

  static Texts of(Margin margin) {
    return new Texts(margin, ImmutableSortedMap.of());
  }

  /** The texts of a finding whose numbers are set. */
  public static final class Texts {
    private final Margin margin;
    private final ImmutableSortedMap<String, String> attributes;

    private Texts(Margin margin, ImmutableSortedMap<String, String> attributes) {
      this.margin = margin;
      this.attributes = attributes;
    }

    /**
     * Adds an attribute.
     *
     * @param name its name
     * @param value its value, as the message shows it; text of its own, never a format
     * @return these texts and the attribute
     * @throws IllegalArgumentException if there is one of this name
     */
    public Texts with(String name, Object value) {
      return new Texts(
          margin,
          ImmutableSortedMap.<String, String>naturalOrder()
              .putAll(attributes)
              .put(name, value.toString())
              .buildOrThrow());
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
      return new Finding(
          margin.subject(),
          margin.measured(),
          margin.limit(),
          margin.left(),
          margin.band(),
          message,
          attributes,
          remedy);
    }
  }
}
