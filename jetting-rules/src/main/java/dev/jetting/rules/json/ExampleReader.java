package dev.jetting.rules.json;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toCollection;

import dev.jetting.rules.Outcome.Status;
import dev.jetting.units.Sentence;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Checks what the examples of a rule say; every refusal names the place. */
final class ExampleReader {

  static final int MOST_EXAMPLES = 20;
  static final int MOST_EDITS = 20;

  private static final Set<Status> JUDGED = EnumSet.of(Status.PASSED, Status.FAILED);
  private static final Set<Status> ALLOWED = EnumSet.complementOf(EnumSet.of(Status.BROKEN));

  private ExampleReader() {}

  static void check(Path path, List<ExampleForm> examples, Condition require) {
    RuleFileReader.size(path, examples, MOST_EXAMPLES, "error.examples.count");
    for (int i = 0; i < examples.size(); i++) {
      check(path.child(i), examples.get(i), require);
    }
  }

  private static void check(Path path, ExampleForm example, Condition require) {
    RuleFileReader.line(path.child("on"), example.on());
    example.edits().ifPresent(edits -> edits(path.child("edits"), edits));
    if (!ALLOWED.contains(example.expect())) {
      throw new Misplaced(
          path.child("expect"),
          Sentence.plain(Quote.quoted(Enums.name(example.expect()))),
          Sentence.plain(
              ALLOWED.stream().map(Enums::name).map(Quote::quoted).collect(joining(", "))));
    }
    example.subject().ifPresent(subject -> subject(path.child("subject"), subject, example));
    example.limit().ifPresent(limit -> limit(path.child("limit"), limit, example, require));
  }

  private static void edits(Path path, Map<String, JsonText> edits) {
    RuleFileReader.size(path, edits.keySet(), MOST_EDITS, "error.edits.count");
    edits.forEach(
        (pointer, value) -> {
          RuleFileReader.line(path.child(pointer), pointer);
          RuleFileReader.at(path.child(pointer), () -> SheetEdits.pointer(pointer));
          RuleFileReader.line(path.child(pointer), value.json());
        });
  }

  private static void subject(Path path, String subject, ExampleForm example) {
    if (example.expect() != Status.FAILED) {
      throw new Misplaced(
          path, Sentence.of("error.example.no-fail"), Sentence.of("error.beside-failed"));
    }
    RuleFileReader.line(path, subject);
  }

  private static void limit(Path path, String limit, ExampleForm example, Condition require) {
    if (!JUDGED.contains(example.expect())) {
      throw new Misplaced(
          path, Sentence.of("error.example.no-judge"), Sentence.of("error.beside-judged"));
    }
    Set<Dimension> dimensions = dimensions(require);
    if (dimensions.stream().noneMatch(dimension -> dimension.reads(limit))) {
      throw new Misplaced(
          path,
          Sentence.value(Sentence.of("error.name.limit"), Quote.quoted(limit)),
          dimensions.isEmpty()
              ? Sentence.of("error.limit-none")
              : Sentence.or(dimensions.stream().map(Dimension::allowed).toList()));
    }
  }

  /** Of what a limit of the condition can be. */
  static Set<Dimension> dimensions(Condition require) {
    return require
        .leaves()
        .flatMap(leaf -> leaf instanceof Condition.Bound bound ? Stream.of(bound) : Stream.of())
        .map(bound -> bound.source().definition().dimension())
        .collect(toCollection(() -> EnumSet.noneOf(Dimension.class)));
  }
}
