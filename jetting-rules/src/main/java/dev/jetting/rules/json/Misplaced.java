package dev.jetting.rules.json;

import dev.jetting.units.Refusal;
import dev.jetting.units.Sentence;
import java.io.Serial;

/** What is wrong at a place of a document whose values each can be read. */
final class Misplaced extends IllegalArgumentException implements Refusal {

  @Serial private static final long serialVersionUID = 1L;

  private final transient Path path;

  private final transient Sentence sentence;

  Misplaced(Path path, Sentence problem, Sentence allowed) {
    super(Sentence.refused(problem, allowed).toString());
    this.path = path;
    this.sentence = Sentence.refused(problem, allowed);
  }

  /** The same in the words of a check. */
  Misplaced(Path path, IllegalArgumentException check) {
    super(check.getMessage(), check);
    this.path = path;
    this.sentence = Refusal.of(check);
  }

  @Override
  public Sentence sentence() {
    return sentence;
  }

  Path path() {
    return path;
  }
}
