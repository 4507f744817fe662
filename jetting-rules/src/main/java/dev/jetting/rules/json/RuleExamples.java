package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.RuleRemark.Kind;
import dev.jetting.units.Refusal;
import dev.jetting.units.Sentence;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Tries the examples of a rule file. */
final class RuleExamples {

  /** By how much of its size a limit may differ from the one that is stated. */
  private static final double TOLERANCE = 1e-6;

  private final RuleFileForm file;
  private final List<Rule> rules;
  private final Document document;
  private final ImmutableMap<String, SetupSheet> sheets;
  private final List<RuleRemark> remarks = new ArrayList<>();

  RuleExamples(
      RuleFileForm file, List<Rule> rules, Document document, Map<String, SetupSheet> sheets) {
    this.file = file;
    this.rules = rules;
    this.document = document;
    this.sheets = ImmutableMap.copyOf(sheets);
  }

  List<RuleRemark> remarks() {
    for (int i = 0; i < rules.size(); i++) {
      Path path = Path.ROOT.child("rules").child(i);
      RuleForm form = file.rules().get(i);
      Set<Status> seen = EnumSet.noneOf(Status.class);
      List<ExampleForm> examples = form.examples().orElse(List.of());
      for (int j = 0; j < examples.size(); j++) {
        tried(path.child("examples").child(j), rules.get(i), form, examples.get(j))
            .ifPresent(seen::add);
      }
      missing(path, form, seen, Status.PASSED, "passes");
      missing(path, form, seen, Status.FAILED, "fails");
    }
    return List.copyOf(remarks);
  }

  private void missing(Path path, RuleForm form, Set<Status> seen, Status status, String words) {
    if (!seen.contains(status)) {
      remark(path, Kind.NO_EXAMPLE, form, "no example holds on which the rule " + words);
    }
  }

  private void remark(Path path, Kind kind, RuleForm form, String message) {
    remarks.add(RuleRemark.at(document, path, kind, form.id(), message));
  }

  /** The outcome of an example that holds. */
  private Optional<Status> tried(Path path, Rule rule, RuleForm form, ExampleForm example) {
    SetupSheet base = sheets.get(example.on());
    if (base == null) {
      remark(path.child("on"), Kind.EXAMPLE_UNUSABLE, form, unknown(example.on()));
      return Optional.empty();
    }
    Outcome outcome;
    try {
      outcome = rule.evaluate(AssessedSetting.of(edited(base, example)));
    } catch (IllegalArgumentException e) {
      remark(
          path,
          Kind.EXAMPLE_UNUSABLE,
          form,
          Sentence.of("error.edits").with("problem", Refusal.of(e)).toString());
      return Optional.empty();
    }
    Optional<String> differs = differs(example, form, outcome);
    differs.ifPresent(words -> remark(path, Kind.EXAMPLE_FAILS, form, words));
    return differs.isPresent() ? Optional.empty() : Optional.of(outcome.status());
  }

  private String unknown(String name) {
    return "unknown sheet "
        + Quote.quoted(name)
        + Nearest.hint(name, sheets.keySet())
        + "; known "
        + Nearest.of(name, sheets.keySet(), 4).stream()
            .map(Quote::quoted)
            .collect(Collectors.joining(", "));
  }

  private static SetupSheet edited(SetupSheet base, ExampleForm example) {
    Map<String, JsonText> edits = example.edits().orElse(Map.of());
    return SheetEdits.edited(base, Maps.transformValues(edits, JsonText::json));
  }

  private static Optional<String> differs(ExampleForm example, RuleForm form, Outcome outcome) {
    if (outcome.status() != example.expect()) {
      return Optional.of("expected " + Enums.name(example.expect()) + ", but it " + words(outcome));
    }
    Outcome on = outcome;
    if (example.subject().isPresent()) {
      String subject = example.subject().get();
      on =
          Outcome.of(outcome.findings().stream().filter(f -> f.subject().equals(subject)).toList());
      if (on.findings().isEmpty()) {
        return Optional.of(
            "expected a finding on " + Quote.quoted(subject) + ", but it " + words(outcome));
      }
    }
    Optional<Margin> nearest = on.nearest();
    return example
        .limit()
        .filter(limit -> nearest.isEmpty() || !isLimit(limit, nearest.get(), form))
        .map(limit -> "expected the limit " + limit + ", but it " + limitOf(nearest));
  }

  /** In any quantity of the rule that has the margin's unit. */
  private static boolean isLimit(String text, Margin margin, RuleForm form) {
    Condition require =
        RuleFileReader.condition(form.band().orElse(ThrottleBand.WHOLE), Path.ROOT, form.require());
    double is = margin.limit().value();
    return ExampleReader.dimensions(require).stream()
        .filter(dimension -> dimension.unit().equals(margin.limit().unit()))
        .filter(dimension -> dimension.reads(text))
        .mapToDouble(dimension -> dimension.read(text))
        .anyMatch(stated -> Math.abs(is - stated) <= TOLERANCE * Math.abs(stated));
  }

  private static String limitOf(Optional<Margin> nearest) {
    return nearest.map(margin -> "is " + margin.limit()).orElse("states none");
  }

  private static String words(Outcome outcome) {
    String findings =
        outcome.findings().stream().map(RuleExamples::words).collect(Collectors.joining("; "));
    String more = findings.isEmpty() ? outcome.reason() : findings;
    return "is " + Enums.name(outcome.status()) + (more.isEmpty() ? "" : ": " + more);
  }

  private static String words(Finding finding) {
    return finding.text() + " (on " + finding.subject() + ")";
  }
}
