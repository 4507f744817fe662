package dev.jetting.rules.json;

import com.fasterxml.jackson.databind.JsonNode;
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
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Tries the examples of a rule file. */
final class RuleExamples {

  /** By how much of its size a limit may differ from the one that is stated. */
  private static final double TOLERANCE = 1e-6;

  private final RuleFileForm file;
  private final List<Rule> rules;
  private final Document document;
  private final ImmutableMap<String, SetupSheet> sheets;

  /** The sheets as trees, each written once. */
  private final Map<String, JsonNode> documents = new HashMap<>();

  private final Remarks remarks = new Remarks();

  RuleExamples(
      RuleFileForm file, List<Rule> rules, Document document, Map<String, SetupSheet> sheets) {
    this.file = file;
    this.rules = rules;
    this.document = document;
    this.sheets = ImmutableMap.copyOf(sheets);
  }

  List<RuleRemark> remarks() {
    for (int i = 0; i < rules.size() && !remarks.isFull(); i++) {
      Path path = Path.ROOT.child("rules").child(i);
      RuleForm form = file.rules().get(i);
      Set<Status> seen = EnumSet.noneOf(Status.class);
      List<ExampleForm> examples = form.examples().orElse(List.of());
      for (int j = 0; j < examples.size(); j++) {
        tried(path.child("examples").child(j), rules.get(i), form, examples.get(j))
            .ifPresent(seen::add);
      }
      missing(path, form, seen, Status.PASSED, "remark.no-example.passes");
      missing(path, form, seen, Status.FAILED, "remark.no-example.fails");
    }
    return remarks.in(document);
  }

  private void missing(Path path, RuleForm form, Set<Status> seen, Status status, String key) {
    if (!seen.contains(status)) {
      remark(path, Kind.NO_EXAMPLE, form, Message.of(key));
    }
  }

  private void remark(Path path, Kind kind, RuleForm form, Message words) {
    remarks.add(path, kind, form.id(), words);
  }

  /** The outcome of an example that holds. */
  private Optional<Status> tried(Path path, Rule rule, RuleForm form, ExampleForm example) {
    SetupSheet base = sheets.get(example.on());
    if (base == null) {
      remark(
          path.child("on"),
          Kind.EXAMPLE_UNUSABLE,
          form,
          Nearest.known("remark.unknown-sheet", example.on(), sheets.keySet()));
      return Optional.empty();
    }
    Outcome outcome;
    try {
      outcome = rule.evaluate(AssessedSetting.of(edited(example.on(), base, example)));
    } catch (IllegalArgumentException e) {
      remark(
          path,
          Kind.EXAMPLE_UNUSABLE,
          form,
          Message.of("error.edits").with("problem", Argument.words(Message.of(e))));
      return Optional.empty();
    }
    Optional<Message> differs = differs(example, form, outcome);
    differs.ifPresent(words -> remark(path, Kind.EXAMPLE_FAILS, form, words));
    return differs.isPresent() ? Optional.empty() : Optional.of(outcome.status());
  }

  private SetupSheet edited(String on, SetupSheet base, ExampleForm example) {
    Map<String, JsonText> edits = example.edits().orElse(Map.of());
    JsonNode document = documents.computeIfAbsent(on, name -> SheetEdits.document(base));
    return SheetEdits.edited(document, Maps.transformValues(edits, JsonText::json));
  }

  private static Optional<Message> differs(ExampleForm example, RuleForm form, Outcome outcome) {
    if (outcome.status() != example.expect()) {
      return Optional.of(butItIs("remark.expected-status", Enums.name(example.expect()), outcome));
    }
    Outcome on = outcome;
    if (example.subject().isPresent()) {
      String subject = example.subject().get();
      on =
          Outcome.of(outcome.findings().stream().filter(f -> f.subject().equals(subject)).toList());
      if (on.findings().isEmpty()) {
        return Optional.of(butItIs("remark.expected-finding", Quote.quoted(subject), outcome));
      }
    }
    Optional<Margin> nearest = on.nearest();
    return example
        .limit()
        .filter(limit -> nearest.isEmpty() || !isLimit(limit, nearest.get(), form))
        .map(limit -> limitOf(nearest).with("expected", Argument.name(limit)));
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

  private static Message limitOf(Optional<Margin> nearest) {
    return nearest
        .map(margin -> margin.limit().argument())
        .map(limit -> Message.of("remark.expected-limit").with("limit", limit))
        .orElseGet(() -> Message.of("remark.expected-limit.none"));
  }

  private static Message butItIs(String key, String expected, Outcome outcome) {
    Optional<Argument> more = more(outcome);
    Message words =
        Message.of(more.isPresent() ? key + ".because" : key)
            .with("expected", Argument.name(expected))
            .with("status", Argument.name(Enums.name(outcome.status())));
    return more.map(why -> words.with("why", why)).orElse(words);
  }

  /** What was found, or else the reason of the outcome. */
  private static Optional<Argument> more(Outcome outcome) {
    if (outcome.findings().isEmpty()) {
      return Optional.of(outcome.why()).filter(why -> !why.text().isEmpty()).map(Argument::words);
    }
    return Optional.of(
        Argument.items(outcome.findings().stream().map(RuleExamples::words).toList()));
  }

  private static Argument words(Finding finding) {
    return Argument.words(
        Message.of("remark.on")
            .with("finding", Argument.words(finding.words()))
            .with("subject", Argument.name(finding.subject())));
  }
}
