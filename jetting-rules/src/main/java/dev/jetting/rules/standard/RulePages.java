package dev.jetting.rules.standard;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Message;
import dev.jetting.units.TradeStyle;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A page for people on each rule of the standard rulebook, in Markdown. It has what the rule
 * checks, why, its source, a setting that passes, one that fails, the remedy, and how to waive it.
 * The pages also stand <a href="doc-files/index.md">beside this documentation</a>.
 *
 * <p>Title, severity, throttle band and reason come from the rule itself, the rest from one file a
 * rule. The examples are edits of {@link #baseSheet()}: JSON Pointers (RFC 6901), each with the
 * value to put there.
 *
 * <p>Not for rules of other rulebooks; those bring their own documentation.
 */
public final class RulePages {

  /** Where the pages stand beside the documentation of the module. */
  private static final String FOLDER = "dev/jetting/rules/standard/doc-files/";

  private RulePages() {}

  /**
   * The page of a rule.
   *
   * @param ruleId id of a rule of the standard rulebook, or one that it had before
   * @return the page in Markdown; empty if the standard rulebook has no such rule
   */
  public static Optional<String> page(String ruleId) {
    Objects.requireNonNull(ruleId, "ruleId");
    return StandardRulebook.rulebook().rule(ruleId).map(RulePages::page);
  }

  /** {@return a list of all rules with links to their pages, in Markdown} */
  public static String index() {
    return StandardRulebook.rulebook().rules().stream()
        .map(rule -> "- [" + rule.id() + "](" + rule.id() + ".md): " + rule.title() + "\n")
        .collect(Collectors.joining("", "# The rules of the standard rulebook\n\n", ""));
  }

  /** {@return the setup sheet that the examples are edits of, in JSON; no rule fails on it} */
  public static String baseSheet() {
    return resource("base.json");
  }

  /** A rule with its texts, its tags and its page. */
  static Rule.Draft draft(String ruleId, String... tags) {
    return Rule.named(ruleId)
        .title(Message.of("rule." + ruleId + ".title").text())
        .rationale(Message.of("rule." + ruleId + ".rationale").text())
        .tagged(tags)
        .link(FOLDER + ruleId + ".md");
  }

  private static String page(Rule rule) {
    return "# "
        + rule.title()
        + "\n\n`"
        + rule.id()
        + "`: "
        + rule.severity().name().toLowerCase(Locale.ROOT)
        + ", "
        + band(rule.band())
        + ". Examples are edits of the [base sheet](base.json).\n\n## Why\n\n"
        + rule.rationale()
        + "\n\n"
        + resource(rule.id() + ".md");
  }

  private static String band(ThrottleBand band) {
    if (band.equals(ThrottleBand.WHOLE)) {
      return "whole throttle range";
    }
    String from = TradeStyle.throttle(band.from());
    return band.from().equals(band.to())
        ? from
        : "throttle from " + from + " to " + TradeStyle.throttle(band.to());
  }

  private static String resource(String name) {
    try (InputStream in = RulePages.class.getResourceAsStream("pages/" + name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
