package dev.jetting.rules.laws;

import java.util.List;

/**
 * The library's laws. Each is a value; {@link LawKit} tries them over many trials.
 *
 * <p>A law that is not violated is not proved: it held on what was tried.
 */
public final class Laws {

  /**
   * By how much the lean risk may move the wrong way, a probability: 1e-4.
   *
   * <p>The lean risk is a sum over cases of the engine's air. In each case λ is monotone in each
   * part, but a part changes the spread within the case too. How little that moves the risk is
   * measured, in DECISIONS.md of jetting-rules. Assumed: far more than what was seen.
   */
  public static final double RISK_TOLERANCE = 1e-4;

  /**
   * By how much λ may move the wrong way, by its own size: 1e-9, the rounding of the model's roots.
   */
  public static final double LAMBDA_TOLERANCE = 1e-9;

  private Laws() {}

  /** {@return all laws but {@link #remedies()}, with the tolerances of this class} */
  public static List<Law> all() {
    return List.of(
        neverBroken(),
        pure(),
        order(),
        doubleNegation(),
        andOr(),
        deMorgan(),
        whenUnless(),
        wellFormed(),
        band(),
        margins(),
        monotone(),
        lambda(),
        leanRisk(RISK_TOLERANCE),
        waivers(),
        json());
  }

  /** {@return no rule, and no branch of one, ever comes out broken} */
  public static Law neverBroken() {
    return Law.ofEachRule(
        "never-broken",
        "No rule breaks",
        "On a sheet that can be assessed no rule throws or gives no outcome: BROKEN never appears,"
            + " nor in a branch.",
        OutcomeLaws::neverBroken);
  }

  /**
   * The same setting always gets the same outcome: judged twice, and assessed and judged anew by
   * another thread under another default locale and time zone.
   *
   * <p>Its check changes the defaults of the whole process for a moment; do not run it beside code
   * that depends on them.
   *
   * @return the law
   */
  public static Law pure() {
    return Law.of(
        "pure",
        "Pure and deterministic",
        "The same setting gets an equal outcome, however often, on whatever thread, locale and time"
            + " zone.",
        PureLaw::check);
  }

  /** {@return the rules in another order give an equal report} */
  public static Law order() {
    return Law.of(
        "order",
        "The order of the rules does not matter",
        "A rulebook of the same rules in another order gives an equal report.",
        OrderLaw::check);
  }

  /** {@return not(not(r)) has the status, the findings and the reason of r} */
  public static Law doubleNegation() {
    return Law.ofEachRule(
        "double-negation",
        "not(not(r)) is r",
        "A rule negated twice comes out as the rule itself, its findings included.",
        CompositionLaws::doubleNegation);
  }

  /** {@return the truth tables of allOf and anyOf; empty allOf passes, empty anyOf fails} */
  public static Law andOr() {
    return Law.ofEachRule(
        "and-or",
        "The truth tables of and and or",
        "allOf and anyOf of a rule and a rule of each status, in either order, come out as the"
            + " truth tables say, with a branch for each; without rules allOf passes and anyOf"
            + " fails.",
        CompositionLaws::andOr);
  }

  /** {@return not(all(r, s)) is any(not r, not s), and the other way round} */
  public static Law deMorgan() {
    return Law.ofEachRule(
        "de-morgan",
        "De Morgan's laws",
        "not(allOf(r, s)) has the status of anyOf(not r, not s), and not(anyOf(r, s)) that of"
            + " allOf(not r, not s).",
        CompositionLaws::deMorgan);
  }

  /** {@return when, unless and withSeverity leave the outcome or make it not applicable} */
  public static Law whenUnless() {
    return Law.ofEachRule(
        "when-unless",
        "when, unless and severity",
        "A rule when a condition holds, unless one does not, and with another severity comes out as"
            + " itself; when it does not hold, and unless it does, it is not applicable for the"
            + " reason given.",
        CompositionLaws::whenUnless);
  }

  /** {@return outcomes and findings are complete and agree with themselves} */
  public static Law wellFormed() {
    return Law.ofEachRule(
        "well-formed",
        "Outcomes and findings are well-formed",
        "A failed rule has findings, unless it is composed; only a failed rule has; one that is not"
            + " applicable or not evaluated says why. Of a finding, measured value, limit and"
            + " margin have one unit, the margin is their difference and not above zero, the"
            + " subject is a path of the sheet or setup, each placeholder of the message has its"
            + " attribute, and message and remedy are not blank.",
        OutcomeLaws::wellFormed);
  }

  /**
   * A rule with a throttle band uses only values of that band. Its outcome stays, to the rounding,
   * when everything outside its band is changed. That is mixture, limits and risk, the mixture that
   * the engine needs, the riding, and the engine's filling at the speeds there.
   *
   * @return the law
   */
  public static Law band() {
    return Law.ofEachRule(
        "band",
        "A rule that names a throttle band looks only there",
        "The outcome of a rule with a throttle band does not change with what is outside of it, and"
            + " its findings name nothing outside of it.",
        BandLaw::check);
  }

  /**
   * What passes and what fails are the same number. Where a small step of a part takes a rule from
   * passed to failed, or back, next to nothing is left to the limit on both sides. A count may
   * change by one.
   *
   * @return the law
   */
  public static Law margins() {
    return Law.ofEachRule(
        "margins",
        "What passes and what fails are the same number",
        "Where a change of a part takes a rule from passed to failed, or back, the change is halved"
            + " until both are next to each other. What is left to the limit is then next to"
            + " nothing on both sides.",
        MarginLaw::check);
  }

  /**
   * {@return a rule declared {@link Monotone} answers each part as declared; not tried on a sheet
   * with observations of a proven setup, by which λ is monotone to some 1e-3 only}
   */
  public static Law monotone() {
    return Law.ofEachRule(
        "monotone",
        "Monotone in each part, where declared",
        "A richer part never turns a rule of the lean side from passed to failed, nor carries it"
            + " further beyond its limit; a leaner part never does the opposite; rules of the rich"
            + " side the other way round.",
        MonotoneLaws::rule);
  }

  /**
   * {@return a richer part never raises λ at any opening or on the overrun, a leaner never lowers;
   * not tried on a sheet with observations of a proven setup}
   */
  public static Law lambda() {
    return Law.of(
        "lambda",
        "λ is monotone in each part",
        "A richer part never raises λ at any throttle opening, on any of the days, or on the"
            + " overrun; a leaner part never lowers it. Rounding is allowed for.",
        MonotoneLaws::lambda);
  }

  /**
   * A richer part never raises the lean risk at any throttle opening by more than a tolerance, a
   * leaner part never lowers it by more. Not tried on a sheet with observations of a proven setup.
   *
   * @param tolerance a probability, 0 to 1; {@link #RISK_TOLERANCE} for the library's own risk
   *     model
   * @return the law
   * @throws IllegalArgumentException if the tolerance is out of range
   */
  public static Law leanRisk(double tolerance) {
    if (!(tolerance >= 0 && tolerance <= 1)) {
      throw new IllegalArgumentException(
          "tolerance of the lean risk " + Numbers.text(tolerance) + ": allowed 0 to 1");
    }
    return Law.of(
        "lean-risk",
        "The lean risk is monotone in each part",
        "A richer part never raises the lean risk at any throttle opening, on any of the days; a"
            + " leaner part never lowers it. The tolerance is "
            + Numbers.text(tolerance)
            + ".",
        experiment -> MonotoneLaws.leanRisk(experiment, tolerance));
  }

  /** {@return waivers of all findings let no change pass that makes a danger worse} */
  public static Law waivers() {
    return Law.of(
        "waivers",
        "A waiver covers nothing worse than what was accepted",
        "Where all findings of a setting are waived and a part is changed, the report passes only"
            + " if no danger is further beyond its limit than before, and no lean risk is higher"
            + " than the highest before or the accepted one.",
        WaiverLaw::check);
  }

  /** {@return the report, written as JSON and read back, is equal and written alike} */
  public static Law json() {
    return Law.of(
        "json",
        "JSON round trip of the report",
        "The report, written as JSON and read back, is equal, and is written the same again.",
        JsonLaw::check);
  }

  /**
   * The change that a report advises for a finding never carries that finding further beyond its
   * limit and brings no danger; the first remedy, followed again and again, ends and never comes
   * back to a setting.
   *
   * <p>Not among {@link #all()}: each trial works out some reports with their plans, a second or
   * so. Add it with {@link LawKit#with}.
   *
   * @return the law
   */
  public static Law remedies() {
    return Law.of(
        "remedies",
        "Remedies help, and following them ends",
        "A change advised for a finding never worsens it and brings no danger; the first remedy,"
            + " followed again and again, ends and never comes back to a setting.",
        RemedyLaws::check);
  }
}
