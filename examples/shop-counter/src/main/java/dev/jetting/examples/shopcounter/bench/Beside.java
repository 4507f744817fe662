package dev.jetting.examples.shopcounter.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Two machines beside each other.
 *
 * @param left one machine
 * @param right the other
 * @param parts each part on both
 * @param charts the numbers of both charts, as JSON
 */
public record Beside(Side left, Side right, List<Line> parts, String charts) {

  private static final ObjectMapper JSON = new ObjectMapper();

  /**
   * One of the two.
   *
   * @param machine the machine
   * @param verdict what its report comes to
   * @param days the riskiest opening of each day
   */
  public record Side(Machine machine, Verdict verdict, List<DayLine> days) {}

  /**
   * A part on both machines.
   *
   * @param part the part
   * @param left its size on one
   * @param right its size on the other
   */
  public record Line(String part, String left, String right) {

    /** {@return whether they differ} */
    public boolean differs() {
      return !left.equals(right);
    }
  }

  /**
   * Puts two machines beside each other.
   *
   * @param left one machine
   * @param right the other
   * @param words the language
   * @return both
   */
  public static Beside of(Machine left, Machine right, Words words) {
    AssessedSetting one = Knowledge.of(left).assess(left.sheet());
    AssessedSetting other = Knowledge.of(right).assess(right.sheet());
    return new Beside(
        side(left, one, words),
        side(right, other, words),
        lines(Cards.setting(one.setup(), words), Cards.setting(other.setup(), words)),
        json(List.of(Charts.of(one, one, words), Charts.of(other, other, words))));
  }

  private static Side side(Machine machine, AssessedSetting setting, Words words) {
    return new Side(
        machine,
        Verdict.of(StandardRulebook.rulebook().evaluate(setting), words),
        DayLine.all(setting, words));
  }

  private static List<Line> lines(Map<String, String> left, Map<String, String> right) {
    List<Line> lines = new ArrayList<>();
    left.forEach((part, size) -> lines.add(new Line(part, size, right.getOrDefault(part, "–"))));
    return lines;
  }

  private static String json(List<Charts> charts) {
    try {
      return JSON.writeValueAsString(charts);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
