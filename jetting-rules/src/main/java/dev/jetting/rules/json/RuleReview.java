package dev.jetting.rules.json;

import static java.util.Comparator.comparing;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toSet;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Iterables;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.Cases.Wanted;
import dev.jetting.rules.json.RuleRemark.Kind;
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
  private final List<RuleRemark> remarks = new ArrayList<>();

  /** A rule with its conditions. */
  private record Reviewed(
      RuleForm form, ThrottleBand band, Optional<Condition> when, Condition require, Path path) {

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

    Set<String> measures() {
      return Stream.concat(when.stream(), Stream.of(require))
          .flatMap(Condition::leaves)
          .map(RuleReview::measure)
          .collect(toSet());
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
    for (int i = 0; i < file.rules().size(); i++) {
      Reviewed rule = rule(Path.ROOT.child("rules").child(i), file.rules().get(i));
      int before = remarks.size();
      texts(rule);
      conditions(rule);
      boolean judges =
          remarks.subList(before, remarks.size()).stream()
              .allMatch(
                  remark ->
                      remark.kind() == Kind.ADDS_NOTHING || remark.kind() == Kind.UNKNOWN_TEXT);
      if (judges) {
        others(rule, sound);
        sound.add(rule);
      }
    }
    remarks.sort(comparing(RuleRemark::line).thenComparing(RuleRemark::column));
    return List.copyOf(remarks);
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

  private void remark(Kind kind, Reviewed rule, Path path, String message) {
    remarks.add(RuleRemark.at(document, path, kind, rule.form().id(), message));
  }

  private void conditions(Reviewed rule) {
    Path require = rule.path().child("require");
    if (rule.when().isPresent()) {
      Path when = rule.path().child("when");
      if (!part(rule, when, rule.form().when().orElseThrow(), "the rule never applies")) {
        return;
      }
      if (cases.areImpossible(List.of(rule.applies(true), rule.required(true)))) {
        remark(Kind.NEVER_HOLDS, rule, require, neverWhere(rule));
        return;
      }
      if (cases.areImpossible(rule.fails())) {
        remark(Kind.ALWAYS_HOLDS, rule, require, alwaysWhere(rule));
        return;
      }
    }
    part(rule, require, rule.form().require(), "the rule never passes");
  }

  private static String neverWhere(Reviewed rule) {
    return "never holds where the rule applies, so that the rule never passes: "
        + shown(rule.require());
  }

  private static String alwaysWhere(Reviewed rule) {
    return "always holds where the rule applies, so that the rule never fails: "
        + shown(rule.require());
  }

  /** Whether a condition and its parts are such that some settings meet it and others do not. */
  private boolean part(Reviewed rule, Path path, ConditionForm form, String then) {
    Condition condition = RuleFileReader.condition(rule.band(), path, form);
    if (cases.areImpossible(List.of(new Wanted(condition, true, rule.band())))) {
      String so = then.isEmpty() ? "" : ", so that " + then;
      remark(Kind.NEVER_HOLDS, rule, path, "no setting meets this" + so + ": " + shown(condition));
      return false;
    }
    if (cases.areImpossible(List.of(new Wanted(condition, false, rule.band())))) {
      remark(Kind.ALWAYS_HOLDS, rule, path, "every setting meets this: " + shown(condition));
      return false;
    }
    form.not().ifPresent(not -> part(rule, path.child("not"), not, ""));
    form.all().ifPresent(all -> parts(rule, path.child("all"), all, true));
    form.any().ifPresent(any -> parts(rule, path.child("any"), any, false));
    return true;
  }

  private void parts(Reviewed rule, Path path, List<ConditionForm> forms, boolean all) {
    List<Condition> kept = new ArrayList<>();
    for (int i = 0; i < forms.size(); i++) {
      if (part(rule, path.child(i), forms.get(i), "")) {
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
        remark(
            Kind.ADDS_NOTHING,
            rule,
            path.child(i),
            "adds nothing to the conditions beside it: " + shown(each));
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
    if (texts.isPresent() && !texts.get().contains(text)) {
      remark(
          Kind.UNKNOWN_TEXT,
          rule,
          path,
          measure
              + " is never "
              + Quote.quoted(text)
              + Nearest.hint(text, texts.get())
              + "; known "
              + Nearest.of(text, texts.get(), 4).stream()
                  .map(Quote::quoted)
                  .collect(joining(", ")));
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
            "fails just where rule " + other.form().id() + " fails");
        return;
      }
      if (onlyThere || alwaysThere) {
        Reviewed lesser = onlyThere ? rule : other;
        Reviewed greater = onlyThere ? other : rule;
        remark(
            Kind.IMPLIED,
            lesser,
            lesser.path(),
            "fails only where rule " + greater.form().id() + " fails too");
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

  private static String shown(Condition condition) {
    return Quote.listed(condition.words().text());
  }
}
