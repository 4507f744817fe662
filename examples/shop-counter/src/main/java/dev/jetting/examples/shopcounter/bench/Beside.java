package dev.jetting.examples.shopcounter.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.examples.shopcounter.store.Machine;
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
   * @return both
   */
  public static Beside of(Machine left, Machine right) {
    AssessedSetting one = Knowledge.of(left).assess(left.sheet());
    AssessedSetting other = Knowledge.of(right).assess(right.sheet());
    return new Beside(
        side(left, one),
        side(right, other),
        lines(Cards.setting(one.setup()), Cards.setting(other.setup())),
        json(List.of(Charts.of(one, one), Charts.of(other, other))));
  }

  private static Side side(Machine machine, AssessedSetting setting) {
    return new Side(
        machine, Verdict.of(StandardRulebook.rulebook().evaluate(setting)), DayLine.all(setting));
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
