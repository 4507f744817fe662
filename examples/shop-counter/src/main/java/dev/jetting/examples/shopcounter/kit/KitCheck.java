package dev.jetting.examples.shopcounter.kit;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.json.KitJson;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.text.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A check of some kits that is under way or done. */
public final class KitCheck {

  private final String id;
  private final String visitor;
  private final KitDepth depth;
  private final List<String> lines;
  private final List<Result> done = new ArrayList<>();

  KitCheck(String id, String visitor, KitDepth depth, List<String> lines) {
    this.id = id;
    this.visitor = visitor;
    this.depth = depth;
    this.lines = List.copyOf(lines);
  }

  void run(KitValidator validator) {
    for (int i = 0; i < lines.size() && !Thread.currentThread().isInterrupted(); i++) {
      Result result = result(validator, lines.get(i));
      synchronized (this) {
        done.add(result);
      }
    }
  }

  private Result result(KitValidator validator, String text) {
    try {
      Kit kit = KitJson.read(text);
      return new Result(validator.validate(kit, depth), null);
    } catch (JsonInputException e) {
      return new Result(null, Words.words(e));
    }
  }

  /** What a line is, or why it is no kit. */
  private record Result(@Nullable KitValidation validation, @Nullable Message unreadable) {

    KitLine line(int number, Words words) {
      return validation == null
          ? KitLine.unreadable(number, Objects.requireNonNull(unreadable), words)
          : KitLine.of(number, validation, words);
    }

    KitLine.State state() {
      return validation == null
          ? KitLine.State.NO_KIT
          : validation.passes() ? KitLine.State.PASSES : KitLine.State.FAILS;
    }
  }

  /** {@return what its address contains} */
  public String id() {
    return id;
  }

  String visitor() {
    return visitor;
  }

  /** {@return how many kits there are} */
  public int total() {
    return lines.size();
  }

  /**
   * Returns the results of the kits checked so far, in their order.
   *
   * @param words the language
   * @return a line for each
   */
  public List<KitLine> results(Words words) {
    List<Result> results = results();
    return IntStream.range(0, results.size())
        .mapToObj(i -> results.get(i).line(i + 1, words))
        .toList();
  }

  private synchronized List<Result> results() {
    return List.copyOf(done);
  }

  /** {@return how many kits were checked} */
  public int checked() {
    return results().size();
  }

  /** {@return whether all kits were checked} */
  public boolean finished() {
    return checked() == total();
  }

  /**
   * Counts the results of a kind.
   *
   * @param state the kind
   * @return how many so far
   */
  public long count(KitLine.State state) {
    return results().stream().filter(result -> result.state() == state).count();
  }
}
