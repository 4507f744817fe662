package dev.jetting.rules.json;

import static java.util.Comparator.comparing;
import static java.util.stream.Collectors.toSet;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Iterables;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.Cases.Wanted;
import dev.jetting.rules.json.RuleRemark.Kind;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Looks through a rule file for what its author can hardly have meant. */
final class RuleReview {

  private final RuleFileForm file;
  private final KnownTexts known;
  private final Document document;
  private final Cases cases = new Cases();
  private final Remarks remarks = new Remarks();

  /** A rule with its conditions. */
  private record Reviewed(
      RuleForm form,
      ThrottleBand band,
      Optional<Condition> when,
      Condition require,
      Set<String> measures,
      Path path) {

    Reviewed(
        RuleForm form, ThrottleBand band, Optional<Condition> when, Condition require, Path path) {
      this(form, band, when, require, measures(when, require), path);
    }

    private static Set<String> measures(Optional<Condition> when, Condition require) {
      return Stream.concat(when.stream(), Stream.of(require))
          .flatMap(Condition::leaves)
          .map(RuleReview::measure)
          .collect(toSet());
    }

    Wanted applies(boolean holds) {
      return new Wanted(when.orElseThrow(), holds, band);
    }

    Wanted required(boolean holds) {
      return new Wanted(require, holds, band);
    }

    List<Wanted> fails() {
      return when.isPresent()
          ? ImmutableList.of(applies(true), required(false))
          : ImmutableList.of(required(false));
    }
  }

  private static String measure(Condition leaf) {
    return leaf instanceof Condition.Bound bound
        ? bound.source().definition().name()
        : ((Condition.OneOf) leaf).definition().name();
  }

  RuleReview(RuleFileForm file, KnownTexts known, Document document) {
    this.file = file;
    this.known = known;
    this.document = document;
  }

  List<RuleRemark> remarks() {
    List<Reviewed> sound = new ArrayList<>();
    for (int i = 0; i < file.rules().size() && !remarks.isFull(); i++) {
      Reviewed rule = rule(Path.ROOT.child("rules").child(i), file.rules().get(i));
      int before = remarks.size();
      texts(rule);
      conditions(rule);
      boolean judges =
          remarks.kinds(before).stream()
              .allMatch(kind -> kind == Kind.ADDS_NOTHING || kind == Kind.UNKNOWN_TEXT);
      if (judges) {
        others(rule, sound);
        sound.add(rule);
      }
    }
    return remarks.in(document).stream()
        .sorted(comparing(RuleRemark::line).thenComparing(RuleRemark::column))
        .toList();
  }

  private static Reviewed rule(Path path, RuleForm form) {
    ThrottleBand band = form.band().orElse(ThrottleBand.WHOLE);
    return new Reviewed(
        form,
        band,
        form.when().map(when -> RuleFileReader.condition(band, path.child("when"), when)),
        RuleFileReader.condition(band, path.child("require"), form.require()),
        path);
  }

  private void remark(Kind kind, Reviewed rule, Path path, Message words) {
    remarks.add(path, kind, rule.form().id(), words);
  }

  private void conditions(Reviewed rule) {
    Path require = rule.path().child("require");
    if (rule.when().isPresent()) {
      Path when = rule.path().child("when");
      if (!part(rule, when, rule.form().when().orElseThrow(), "remark.never-applies")) {
        return;
      }
      if (cases.areImpossible(List.of(rule.applies(true), rule.required(true)))) {
        remark(Kind.NEVER_HOLDS, rule, require, on("remark.never-where", rule.require()));
        return;
      }
      if (cases.areImpossible(rule.fails())) {
        remark(Kind.ALWAYS_HOLDS, rule, require, on("remark.always-where", rule.require()));
        return;
      }
    }
    part(rule, require, rule.form().require(), "remark.never-passes");
  }

  /** Whether a condition and its parts are such that some settings meet it and others do not. */
  private boolean part(Reviewed rule, Path path, ConditionForm form, String never) {
    Condition condition = RuleFileReader.condition(rule.band(), path, form);
    if (cases.areImpossible(List.of(new Wanted(condition, true, rule.band())))) {
      remark(Kind.NEVER_HOLDS, rule, path, on(never, condition));
      return false;
    }
    if (cases.areImpossible(List.of(new Wanted(condition, false, rule.band())))) {
      remark(Kind.ALWAYS_HOLDS, rule, path, on("remark.always", condition));
      return false;
    }
    form.not().ifPresent(not -> part(rule, path.child("not"), not, "remark.never"));
    form.all().ifPresent(all -> parts(rule, path.child("all"), all, true));
    form.any().ifPresent(any -> parts(rule, path.child("any"), any, false));
    return true;
  }

  private void parts(Reviewed rule, Path path, List<ConditionForm> forms, boolean all) {
    List<Condition> kept = new ArrayList<>();
    for (int i = 0; i < forms.size(); i++) {
      if (part(rule, path.child(i), forms.get(i), "remark.never")) {
        kept.add(RuleFileReader.condition(rule.band(), path.child(i), forms.get(i)));
      }
    }
    if (kept.size() < forms.size()) {
      return;
    }
    for (int i = kept.size() - 1; i >= 0 && kept.size() > 1; i--) {
      Condition each = kept.get(i);
      List<Wanted> beside =
          kept.stream()
              .filter(other -> other != each)
              .map(other -> new Wanted(other, all, rule.band()))
              .toList();
      // Where those beside it leave nothing at all, it is not this one that is odd.
      if (cases.areImpossible(joined(beside, new Wanted(each, !all, rule.band())))
          && !cases.areImpossible(beside)) {
        kept.remove(i);
        remark(Kind.ADDS_NOTHING, rule, path.child(i), on("remark.adds-nothing", each));
      }
    }
  }

  private void texts(Reviewed rule) {
    rule.form().when().ifPresent(when -> texts(rule, rule.path().child("when"), when));
    texts(rule, rule.path().child("require"), rule.form().require());
  }

  private void texts(Reviewed rule, Path path, ConditionForm form) {
    form.not().ifPresent(not -> texts(rule, path.child("not"), not));
    form.all().ifPresent(all -> texts(rule, path.child("all"), all));
    form.any().ifPresent(any -> texts(rule, path.child("any"), any));
    String measure = form.measure().orElse("");
    form.is().ifPresent(text -> text(rule, path.child("is"), measure, text));
    List<String> oneOf = form.oneOf().orElse(List.of());
    for (int i = 0; i < oneOf.size(); i++) {
      text(rule, path.child("oneOf").child(i), measure, oneOf.get(i));
    }
  }

  private void texts(Reviewed rule, Path path, List<ConditionForm> forms) {
    for (int i = 0; i < forms.size(); i++) {
      texts(rule, path.child(i), forms.get(i));
    }
  }

  private void text(Reviewed rule, Path path, String measure, String text) {
    Optional<Set<String>> texts = known.of(measure);
    if (texts.isPresent() && !texts.get().contains(text) && !remarks.isFull()) {
      remark(
          Kind.UNKNOWN_TEXT,
          rule,
          path,
          Nearest.known("remark.unknown-text", text, texts.get())
              .with("measure", Argument.name(measure)));
    }
  }

  /** Holds a rule against those before it. */
  private void others(Reviewed rule, List<Reviewed> before) {
    for (Reviewed other : before) {
      if (other.measures().stream().noneMatch(rule.measures()::contains)) {
        continue;
      }
      boolean onlyThere = implies(other, rule);
      boolean alwaysThere = implies(rule, other);
      if (onlyThere && alwaysThere) {
        remark(
            Kind.DOUBLED,
            rule,
            rule.path(),
            Message.of("remark.doubled").with("rule", Argument.name(other.form().id())));
        return;
      }
      if (onlyThere || alwaysThere) {
        Reviewed lesser = onlyThere ? rule : other;
        Reviewed greater = onlyThere ? other : rule;
        remark(
            Kind.IMPLIED,
            lesser,
            lesser.path(),
            Message.of("remark.implied").with("rule", Argument.name(greater.form().id())));
        return;
      }
    }
  }

  /** Whether a rule surely fails wherever another one does, and matters as much. */
  private boolean implies(Reviewed greater, Reviewed lesser) {
    boolean sees =
        greater.band().contains(lesser.band().from())
            && greater.band().contains(lesser.band().to());
    if (!sees || greater.form().severity().compareTo(lesser.form().severity()) < 0) {
      return false;
    }
    boolean applies =
        greater.when().isEmpty()
            || cases.areImpossible(joined(lesser.fails(), greater.applies(false)));
    return applies && cases.areImpossible(joined(lesser.fails(), greater.required(true)));
  }

  private static List<Wanted> joined(List<Wanted> all, Wanted more) {
    return ImmutableList.copyOf(Iterables.concat(all, List.of(more)));
  }

  /** A long condition is cut, in English. */
  private static Message on(String key, Condition condition) {
    Message words = condition.words();
    String text = words.text();
    String shown = Quote.listed(text);
    return Message.of(key)
        .with("condition", shown.equals(text) ? Argument.words(words) : Argument.name(shown));
  }
}
