package dev.jetting.rules.json;

import dev.jetting.rules.Rule;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.Condition.Bound;
import dev.jetting.rules.json.Condition.Limit;
import dev.jetting.rules.json.Condition.Source;
import dev.jetting.units.Sentence;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** From what a rule file says to its rules; every refusal names the place. */
final class RuleFileReader {

  static final int MOST_RULES = 200;
  static final int MOST_CONDITIONS = 100;

  /** Of all rules together; each can come to a finding with its words. */
  static final int MOST_CONDITIONS_IN_ALL = 2000;

  /** Of all rules together: two for each of the most rules, for each costs an assessment. */
  static final int MOST_EXAMPLES_IN_ALL = 400;

  static final int DEEPEST = 8;
  static final int MOST_TEXTS = 50;
  static final int MOST_LANGUAGES = 20;
  static final int LONGEST_TEXT = 1000;
  static final double GREATEST_FACTOR = 1000;

  private static final Pattern ONE_LINE =
      Pattern.compile("[^\\p{Cntrl}\\p{Cf}\\p{Cs}\\u2028\\u2029]*");
  private static final Pattern TAG = Pattern.compile("[a-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3}");
  private static final Pattern LINK = Pattern.compile("https?://[^\\s]+|[^:\\s]+");
  private static final Pattern SUBJECT = Pattern.compile("[A-Za-z]+(\\.[A-Za-z]+){0,9}");

  private RuleFileReader() {}

  static RuleFile read(RuleFileForm form) {
    line(Path.ROOT.child("name"), form.name());
    line(Path.ROOT.child("version"), form.version());
    Path path = Path.ROOT.child("rules");
    size(path, form.rules(), MOST_RULES, "error.rules.count");
    Set<String> taken = new HashSet<>();
    List<Rule> rules = new ArrayList<>();
    int conditions = 0;
    int examples = 0;
    for (int i = 0; i < form.rules().size(); i++) {
      RuleForm rule = form.rules().get(i);
      rules.add(rule(path.child(i), rule, taken).definedBy(RuleFile.written(form, rule)));
      conditions += count(rule.when().stream()) + count(Stream.of(rule.require()));
      examples += rule.examples().orElse(List.of()).size();
      inAll(path.child(i), conditions, MOST_CONDITIONS_IN_ALL, "error.conditions.in-all");
      inAll(path.child(i), examples, MOST_EXAMPLES_IN_ALL, "error.examples.in-all");
    }
    return new RuleFile(form, rules);
  }

  /** How many conditions there are, those within others included. */
  private static int count(Stream<ConditionForm> forms) {
    return forms
        .mapToInt(
            form ->
                1
                    + count(form.not().stream())
                    + count(form.all().stream().flatMap(List::stream))
                    + count(form.any().stream().flatMap(List::stream)))
        .sum();
  }

  private static void inAll(Path rule, int count, int most, String key) {
    if (count > most) {
      throw new Misplaced(
          rule,
          Sentence.of(key).with("count", count),
          Sentence.of("error.at-most").with("most", most));
    }
  }

  private static Rule rule(Path path, RuleForm form, Set<String> taken) {
    Rule.Draft draft = at(path.child("id"), () -> Rule.named(form.id()));
    once(path.child("id"), form.id(), taken);
    texts(path.child("texts"), form.texts().orElse(Map.of()));
    Path former = path.child("formerIds");
    List<String> formerIds = form.formerIds().orElse(List.of());
    if (form.formerIds().isPresent()) {
      size(former, formerIds, MOST_TEXTS, "error.ids.count");
    }
    for (int i = 0; i < formerIds.size(); i++) {
      Rule.Draft known = draft;
      String id = formerIds.get(i);
      draft = at(former.child(i), () -> known.formerly(id));
      once(former.child(i), id, taken);
    }
    line(path.child("title"), form.title());
    line(path.child("rationale"), form.rationale());
    line(path.child("message"), form.message());
    line(path.child("remedy"), form.remedy());
    form.subject().ifPresent(subject -> subject(path.child("subject"), subject));
    ThrottleBand band = form.band().orElse(ThrottleBand.WHOLE);
    Conditions conditions = new Conditions(band);
    FileRule judge =
        new FileRule(
            form.id(),
            form.when().map(when -> conditions.read(path.child("when"), when, 1)),
            conditions.read(path.child("require"), form.require(), 1),
            at(path.child("message"), () -> new Template(form.message())),
            at(path.child("remedy"), () -> new Template(form.remedy())),
            form.subject());
    form.examples()
        .ifPresent(all -> ExampleReader.check(path.child("examples"), all, judge.require()));
    return described(path, form, draft)
        .title(form.title())
        .rationale(form.rationale())
        .severity(form.severity())
        .within(band)
        .judging(judge::judge);
  }

  /** With its tags and the address of its page. */
  private static Rule.Draft described(Path path, RuleForm form, Rule.Draft draft) {
    Rule.Draft described = draft;
    List<String> tags = form.tags().orElse(List.of());
    if (form.tags().isPresent()) {
      size(path.child("tags"), tags, MOST_TEXTS, "error.tags.count");
    }
    for (int i = 0; i < tags.size(); i++) {
      Rule.Draft before = described;
      String tag = tags.get(i);
      described = at(path.child("tags").child(i), () -> before.tagged(tag));
    }
    if (form.link().isEmpty()) {
      return described;
    }
    String link = form.link().get();
    if (!LINK.matcher(link).matches()) {
      throw new Misplaced(
          path.child("link"),
          Sentence.of("error.value")
              .with("what", Sentence.of("error.name.link"))
              .with("value", Quote.quoted(link)),
          Sentence.of("error.link.allowed"));
    }
    Rule.Draft tagged = described;
    return at(path.child("link"), () -> tagged.link(link));
  }

  /** The condition that stands at a place of a rule that was read before. */
  static Condition condition(ThrottleBand band, Path path, ConditionForm form) {
    return new Conditions(band).read(path, form, 1);
  }

  private static void texts(Path path, Map<String, RuleTextsForm> byTag) {
    if (byTag.size() > MOST_LANGUAGES) {
      throw new Misplaced(
          path,
          Sentence.of("error.languages.count").with("count", byTag.size()),
          Sentence.of("error.at-most").with("most", MOST_LANGUAGES));
    }
    byTag.forEach(
        (tag, texts) -> {
          Path language = path.child(tag);
          if (!TAG.matcher(tag).matches()) {
            throw new Misplaced(
                language,
                Sentence.of("error.value")
                    .with("what", Sentence.of("error.name.language"))
                    .with("value", Quote.quoted(tag)),
                Sentence.of("error.language-tag"));
          }
          line(language.child("title"), texts.title());
          line(language.child("rationale"), texts.rationale());
          line(language.child("message"), texts.message());
          line(language.child("remedy"), texts.remedy());
          at(language.child("message"), () -> new Template(texts.message()));
          at(language.child("remedy"), () -> new Template(texts.remedy()));
        });
  }

  private static void once(Path path, String id, Set<String> taken) {
    if (!taken.add(id)) {
      throw new Misplaced(
          path,
          Sentence.of("error.id-twice").with("id", Quote.quoted(id)),
          Sentence.of("error.each-id-once"));
    }
  }

  private static void subject(Path path, String subject) {
    if (!SUBJECT.matcher(subject).matches()) {
      throw new Misplaced(
          path,
          Sentence.of("error.value")
              .with("what", Sentence.of("error.name.subject"))
              .with("value", Quote.quoted(subject)),
          Sentence.of("error.subject.allowed"));
    }
  }

  static void line(Path path, String text) {
    boolean good =
        !text.isBlank() && text.length() <= LONGEST_TEXT && ONE_LINE.matcher(text).matches();
    if (!good) {
      throw new Misplaced(
          path,
          Sentence.plain(Quote.quoted(text)),
          Sentence.of("error.one-line.most").with("low", 1).with("high", LONGEST_TEXT));
    }
  }

  static void size(Path path, Collection<?> list, int most, String key) {
    if (list.isEmpty() || list.size() > most) {
      throw new Misplaced(
          path,
          Sentence.of(key).with("count", list.size()),
          Sentence.of("error.to").with("low", 1).with("high", most));
    }
  }

  static <T> T at(Path path, Supplier<T> made) {
    try {
      return made.get();
    } catch (Misplaced e) {
      throw e;
    } catch (IllegalArgumentException e) {
      throw new Misplaced(path, e);
    }
  }

  /** Reads the conditions of one rule and counts them. */
  private static final class Conditions {
    private final ThrottleBand band;
    private int count;

    Conditions(ThrottleBand band) {
      this.band = band;
    }

    Condition read(Path path, ConditionForm form, int depth) {
      if (depth > DEEPEST) {
        throw new Misplaced(
            path,
            Sentence.of("error.nested").with("depth", depth),
            Sentence.of("error.at-most").with("most", DEEPEST));
      }
      if (++count > MOST_CONDITIONS) {
        throw new Misplaced(
            path,
            Sentence.of("error.condition-number").with("number", count),
            Sentence.of("error.to").with("low", 1).with("high", MOST_CONDITIONS));
      }
      checkKind(path, form);
      if (form.all().isPresent()) {
        return new Condition.All(each(path.child("all"), form.all().get(), depth));
      }
      if (form.any().isPresent()) {
        return new Condition.Any(each(path.child("any"), form.any().get(), depth));
      }
      return form.not().isPresent()
          ? new Condition.Not(read(path.child("not"), form.not().get(), depth + 1))
          : onMeasure(path, form);
    }

    private List<Condition> each(Path path, List<ConditionForm> forms, int depth) {
      size(path, forms, MOST_CONDITIONS, "error.conditions.count");
      List<Condition> each = new ArrayList<>();
      for (int i = 0; i < forms.size(); i++) {
        each.add(read(path.child(i), forms.get(i), depth + 1));
      }
      return List.copyOf(each);
    }

    private static void checkKind(Path path, ConditionForm form) {
      long kinds =
          Stream.of(form.all(), form.any(), form.not(), form.measure())
              .filter(Optional::isPresent)
              .count();
      if (kinds != 1) {
        throw new Misplaced(
            path,
            Sentence.of(kinds == 0 ? "error.kinds.none" : "error.kinds.several")
                .with("kinds", "all, any, not, measure"),
            Sentence.of("error.one-of-them"));
      }
      boolean more =
          Stream.of(
                  form.take(),
                  form.within(),
                  form.atMost(),
                  form.atLeast(),
                  form.is(),
                  form.oneOf())
              .anyMatch(Optional::isPresent);
      if (form.measure().isEmpty() && more) {
        throw new Misplaced(
            path, Sentence.of("error.condition.more"), Sentence.of("error.condition.more.allowed"));
      }
    }

    private Condition onMeasure(Path path, ConditionForm form) {
      String name = form.measure().orElseThrow();
      MeasureDefinition definition = definition(path.child("measure"), name);
      return definition instanceof MeasureDefinition.Word word
          ? onText(path, form, word)
          : onNumber(path, form, (MeasureDefinition.Numeric) definition);
    }

    private static Condition onText(Path path, ConditionForm form, MeasureDefinition.Word word) {
      boolean numeric =
          Stream.of(form.take(), form.within(), form.atMost(), form.atLeast())
              .anyMatch(Optional::isPresent);
      if (numeric || form.is().isPresent() == form.oneOf().isPresent()) {
        throw new Misplaced(
            path,
            Sentence.of("error.condition.text").with("measure", word.name()),
            Sentence.of("error.one-of-and"));
      }
      List<String> texts = form.oneOf().orElseGet(() -> List.of(form.is().orElseThrow()));
      size(path.child("oneOf"), texts, MOST_TEXTS, "error.texts.count");
      for (int i = 0; i < texts.size(); i++) {
        line(form.is().isPresent() ? path.child("is") : path.child("oneOf").child(i), texts.get(i));
      }
      return new Condition.OneOf(word, List.copyOf(texts));
    }

    private Condition onNumber(
        Path path, ConditionForm form, MeasureDefinition.Numeric definition) {
      if (form.is().isPresent() || form.oneOf().isPresent()) {
        throw new Misplaced(
            path,
            Sentence.of("error.condition.number").with("measure", definition.name()),
            Sentence.of("error.most-and-least"));
      }
      Source source = source(path, definition, form.take(), form.within());
      List<Condition> bounds = new ArrayList<>();
      form.atMost().ifPresent(t -> bounds.add(bound(path.child("atMost"), source, true, t)));
      form.atLeast().ifPresent(t -> bounds.add(bound(path.child("atLeast"), source, false, t)));
      if (bounds.isEmpty()) {
        throw new Misplaced(
            path, Sentence.of("error.condition.no-limit"), Sentence.of("error.most-least-both"));
      }
      return bounds.size() == 1 ? bounds.get(0) : new Condition.All(List.copyOf(bounds));
    }

    private Bound bound(Path path, Source source, boolean most, Threshold threshold) {
      Limit limit =
          threshold instanceof Threshold.Stated stated
              ? at(path, () -> fixed(source, stated))
              : scaled(path, source, ((Threshold.Against) threshold).other());
      return new Bound(source, most, limit);
    }

    private static Limit fixed(Source source, Threshold.Stated stated) {
      return new Condition.Fixed(source.definition().dimension().read(stated.text()));
    }

    private Limit scaled(Path path, Source source, Threshold.OtherMeasure other) {
      Path named = path.child("measure");
      if (!(definition(named, other.measure()) instanceof MeasureDefinition.Numeric definition)) {
        throw new Misplaced(
            named,
            Sentence.of("error.measure.text").with("measure", other.measure()),
            Sentence.of("error.measure-number"));
      }
      source
          .definition()
          .dimension()
          .differsFrom(definition.dimension())
          .ifPresent(
              allowed -> {
                throw new Misplaced(
                    named,
                    Sentence.of("error.held-against")
                        .with("measure", source.definition().name())
                        .with("other", definition.name()),
                    Sentence.of("error.same-quantity").with("allowed", allowed));
              });
      double times = other.times().orElse(1.0);
      if (!(times > 0 && times <= GREATEST_FACTOR)) {
        throw new Misplaced(
            path.child("times"),
            Sentence.of("error.name.factor"),
            Sentence.of("error.more-than-at-most").with("low", 0).with("most", 1000));
      }
      return new Condition.Scaled(source(path, definition, other.take(), other.within()), times);
    }

    private Source source(
        Path path,
        MeasureDefinition.Numeric definition,
        Optional<Take> take,
        Optional<ThrottleBand> within) {
      if (definition instanceof MeasureDefinition.Swept && take.isEmpty()) {
        throw new Misplaced(
            path.child("take"),
            Sentence.of("error.swept").with("measure", definition.name()),
            Sentence.plain(String.join(", ", Enums.names(Take.class))));
      }
      if (definition instanceof MeasureDefinition.Plain
          && (take.isPresent() || within.isPresent())) {
        throw new Misplaced(
            path,
            Sentence.of("error.plain").with("measure", definition.name()),
            Sentence.of("error.neither"));
      }
      within
          .filter(inner -> !(band.contains(inner.from()) && band.contains(inner.to())))
          .ifPresent(
              inner -> {
                throw new Misplaced(
                    path.child("within"),
                    Sentence.of("error.band-beyond"),
                    Sentence.of("error.from-to").with("low", band.from()).with("high", band.to()));
              });
      return new Source(definition, take.orElse(Take.HIGHEST), within.orElse(ThrottleBand.WHOLE));
    }

    private static MeasureDefinition definition(Path path, String name) {
      return MeasureDefinitions.named(name)
          .orElseThrow(
              () ->
                  new Misplaced(
                      path,
                      Nearest.unknown(
                          "error.unknown-measure",
                          "error.unknown-measure.near",
                          name,
                          MeasureDefinitions.names()),
                      Sentence.of("error.schema-measures")
                          .with(
                              "names",
                              String.join(", ", Nearest.of(name, MeasureDefinitions.names(), 4)))));
    }
  }
}
