package dev.jetting.examples.shopcounter.kit;

import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.json.KitJson;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import java.util.ArrayList;
import java.util.List;

/** A check of some kits that is under way or done. */
public final class KitCheck {

  private final String id;
  private final String visitor;
  private final KitDepth depth;
  private final List<String> lines;
  private final List<KitLine> done = new ArrayList<>();

  KitCheck(String id, String visitor, KitDepth depth, List<String> lines) {
    this.id = id;
    this.visitor = visitor;
    this.depth = depth;
    this.lines = List.copyOf(lines);
  }

  void run(KitValidator validator) {
    for (int i = 0; i < lines.size() && !Thread.currentThread().isInterrupted(); i++) {
      KitLine line = line(validator, i + 1, lines.get(i));
      synchronized (this) {
        done.add(line);
      }
    }
  }

  private KitLine line(KitValidator validator, int number, String text) {
    try {
      Kit kit = KitJson.read(text);
      return KitLine.of(number, validator.validate(kit, depth));
    } catch (JsonInputException e) {
      return KitLine.unreadable(number, String.valueOf(e.getMessage()));
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

  /** {@return the results of the kits checked so far, in their order} */
  public synchronized List<KitLine> results() {
    return List.copyOf(done);
  }

  /** {@return whether all kits were checked} */
  public boolean finished() {
    return results().size() == total();
  }

  /**
   * Counts the results of a kind.
   *
   * @param state the kind
   * @return how many so far
   */
  public long count(KitLine.State state) {
    return results().stream().filter(line -> line.state() == state).count();
  }
}
