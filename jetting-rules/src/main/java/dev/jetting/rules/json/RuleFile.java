package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import dev.jetting.rules.Rule;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.kit.Catalogue;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Rules that somebody wrote without Java, as a JSON document. They stand in a rulebook beside rules
 * written in Java ({@code rulebook.with(file.rules())}) and obey the same laws.
 *
 * <pre>{@code
 * {
 *   "format": "jetting rule file",
 *   "schemaVersion": 1,
 *   "name": "bench rules",
 *   "version": "1",
 *   "rules": [
 *     {
 *       "id": "kit-main-jet",
 *       "title": "Main jet too big for the kit",
 *       "rationale": "The kit was tried with main jets up to 1.20 mm.",
 *       "severity": "warning",
 *       "when": {"measure": "setting.carburettor.id", "is": "slide-28"},
 *       "require": {"measure": "setting.mainJet", "atMost": "1.20 mm"},
 *       "message": "The main jet of {measured} is bigger than {limit}.",
 *       "remedy": "Fit the main jet of the kit's sheet."
 *     }
 *   ]
 * }
 * }</pre>
 *
 * <p>Every field must be there, once, except those that are optional here. None may be null. A rule
 * has {@code id}, {@code title}, {@code rationale}, {@code severity}, {@code require}, {@code
 * message} and {@code remedy}, and optionally
 *
 * <ul>
 *   <li>{@code formerIds}: ids that it had before;
 *   <li>{@code tags}: words by which a rulebook can be filtered, such as {@code ["fuel-supply"]};
 *   <li>{@code link}: where its page stands, an address or a path;
 *   <li>{@code band}: the throttle band that it sees, such as {@code {"from": "1/8", "to": "1/2"}};
 *       the whole range unless given;
 *   <li>{@code when}: the condition without which it is not applicable;
 *   <li>{@code subject}: the path of the part it is about; the measure that failed unless given;
 *   <li>{@code examples}: setup sheets with the outcome on each, which {@link #check} tries;
 *   <li>{@code texts}: by language tag, such as {@code "de"}, {@code title}, {@code rationale},
 *       {@code message} and {@code remedy} in that language, for {@link #texts}.
 * </ul>
 *
 * <p>A condition is an object with one of {@code all} and {@code any} (lists of conditions), {@code
 * not} (a condition) and {@code measure}, the name of something in the assessed setting; the
 * schema, {@link JsonSchemas#ruleFile()}, has the names. With a measure stand
 *
 * <ul>
 *   <li>{@code atMost}, {@code atLeast} or both, limit included: a quantity with its unit, such as
 *       {@code "1.20 mm"}, or another measure of the same quantity, {@code {"measure":
 *       "setting.pilotJet", "times": 2.5}}; a measure without a unit takes a number or a
 *       percentage;
 *   <li>{@code is} or {@code oneOf}, if it is a text;
 *   <li>{@code take} ({@code "lowest"}, {@code "highest"} or {@code "mean"}), and optionally {@code
 *       within}, a band inside the rule's own, if it has a number at each throttle opening.
 * </ul>
 *
 * <p>A rule that needs a missing value, such as the effective area of an open mouth, is not
 * evaluated, unless another condition decides. Its outcome names the measure. The same holds for a
 * band within which no opening was assessed.
 *
 * <p>{@code message} and {@code remedy} may show {@code {measured}}, {@code {limit}}, {@code
 * {measure}} and {@code {throttle}}; there is no other expression in them. Where all conditions
 * must hold, each that does not makes a finding; where any would do, the one nearest to it.
 *
 * <p>An example is an object with {@code on}, the name of a setup sheet that {@link #check} is
 * given, and {@code expect}: {@code "passed"}, {@code "failed"}, {@code "not-applicable"} or {@code
 * "not-evaluated"}. Optionally it has
 *
 * <ul>
 *   <li>{@code edits}: the value to put at each JSON Pointer (RFC 6901) into the sheet's document,
 *       such as {@code {"/setting/mainJet": "1.21 mm"}}, a holder before what it holds;
 *   <li>{@code limit}: the limit that the nearest margin states, such as {@code "1.20 mm"}, to a
 *       millionth;
 *   <li>{@code subject}: what a finding must be on, if it fails.
 * </ul>
 *
 * <p>Limits: 1 000 000 characters, nested 40 deep; 200 rules; 100 conditions a rule and 2000 in
 * all, nested 8 deep; 20 examples a rule and 400 in all, and 20 edits an example; 50 former ids,
 * and texts of {@code oneOf}; 20 languages; texts of one line and 1000 characters; names of 200,
 * numbers of 100 and ids of 60 characters. A review or check ends at 200 remarks.
 *
 * <p>Immutable. Two are equal if they say the same. Not for rules that need arithmetic of their
 * own; those are written in Java.
 */
public final class RuleFile {

  private static final Codec<RuleFile> CODEC =
      new Codec<>(
          RuleFile.class,
          JettingModule.ofRuleFiles(),
          RuleFileForm.HEADER,
          new DocumentLimits(1_000_000, 40));

  private final RuleFileForm form;
  private final List<Rule> rules;

  /** The document that it was read from; empty if another mapper read it. */
  private final Optional<String> source;

  RuleFile(RuleFileForm form, List<Rule> rules) {
    this(form, rules, Optional.empty());
  }

  private RuleFile(RuleFileForm form, List<Rule> rules, Optional<String> source) {
    this.form = form;
    this.rules = List.copyOf(rules);
    this.source = source;
  }

  /**
   * Reads a rule file.
   *
   * @param json the document; not null
   * @return the file
   * @throws JsonInputException if the document is no rule file
   */
  public static RuleFile read(String json) {
    RuleFile file = CODEC.read(Objects.requireNonNull(json, "json"));
    return new RuleFile(file.form, file.rules, Optional.of(json));
  }

  /**
   * Reads a rule file.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the file
   * @throws JsonInputException if the document is no rule file
   * @throws IOException if the reader fails
   */
  public static RuleFile read(Reader json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Reads a rule file.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the file
   * @throws JsonInputException if the document is no rule file
   * @throws IOException if the stream fails
   */
  public static RuleFile read(InputStream json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /** {@return the name of the file, as it says itself} */
  public String name() {
    return form.name();
  }

  /** {@return its version} */
  public String version() {
    return form.version();
  }

  /** {@return its rules in the order they were written; each id, former ids included, once} */
  public List<Rule> rules() {
    return rules;
  }

  /**
   * Returns the texts that the rules bring in a language, for a wording:
   *
   * <pre>{@code
   * Wording german = Wording.of(Locale.GERMAN).with(file.texts(Locale.GERMAN));
   * }</pre>
   *
   * @param locale the language, as {@code texts} names it, or its language without a country
   * @return titles, rationales, messages and remedies by the key that a wording finds them by;
   *     empty if no rule has the language
   */
  public Map<String, String> texts(Locale locale) {
    ImmutableMap.Builder<String, String> all = ImmutableMap.builder();
    for (RuleForm rule : form.rules()) {
      Map<String, RuleTextsForm> byTag = rule.texts().orElse(Map.of());
      Stream.of(locale.toLanguageTag(), locale.getLanguage())
          .flatMap(tag -> Optional.ofNullable(byTag.get(tag)).stream())
          .findFirst()
          .ifPresent(
              texts ->
                  all.put(FileRule.key(rule.id(), "title"), texts.title())
                      .put(FileRule.key(rule.id(), "rationale"), texts.rationale())
                      .put(FileRule.key(rule.id(), "finding"), texts.message())
                      .put(FileRule.key(rule.id(), "remedy"), texts.remedy()));
    }
    return all.buildOrThrow();
  }

  /**
   * {@return the file as a document, lines ended by {@code \n}; the same for equal files, and read
   * back to an equal one}
   */
  public String toJson() {
    return CODEC.write(this);
  }

  /**
   * Reviews the rules: conditions that never hold or always do, parts that add nothing, rules that
   * another one implies. It works on the range of each measure, and keeps silent where it is not
   * sure.
   *
   * @return the first 200 remarks, in the order of the document; places are those of the document
   *     that this file was read from, or of {@link #toJson()} where another mapper read it
   */
  public List<RuleRemark> review() {
    return review(KnownTexts.always());
  }

  /**
   * Reviews the rules as {@link #review()} does, and looks for texts that occur nowhere in a
   * catalogue.
   *
   * @param catalogue what the rules are meant for; a kind of thing that it does not list is not
   *     looked for
   * @return the first 200 remarks, in the order of the document
   */
  public List<RuleRemark> review(Catalogue catalogue) {
    return review(KnownTexts.in(catalogue));
  }

  private List<RuleRemark> review(KnownTexts known) {
    return new RuleReview(form, known, document()).remarks();
  }

  /**
   * Tries the examples of the rules: each edits a named sheet, and states the outcome there.
   *
   * <pre>{@code
   * file.check(Map.of("plain", LawKit.plainSheet())).forEach(out::println);
   * }</pre>
   *
   * @param sheets the sheets by the names that the examples use
   * @return a remark for each example that does not hold or cannot be tried, and for each rule
   *     without an example on which it passes or fails; in the order of the document, 200 at most
   */
  public List<RuleRemark> check(Map<String, SetupSheet> sheets) {
    return new RuleExamples(form, rules, document(), sheets).remarks();
  }

  private Document document() {
    return CODEC.document(source.orElseGet(this::toJson));
  }

  /** A rule as the only one of its file, on one line, without its examples. */
  static String written(RuleFileForm file, RuleForm rule) {
    RuleFileForm alone =
        new RuleFileForm(
            file.format(),
            file.schemaVersion(),
            file.name(),
            file.version(),
            List.of(rule.judging()));
    return CODEC.writeLine(new RuleFile(alone, List.of()));
  }

  RuleFileForm form() {
    return form;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RuleFile that && form.equals(that.form);
  }

  @Override
  public int hashCode() {
    return form.hashCode();
  }

  /** {@return name and version} */
  @Override
  public String toString() {
    return name() + " " + version();
  }
}
