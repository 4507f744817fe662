package dev.jetting.rules.json;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Sets;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.Condition.Bound;
import dev.jetting.rules.json.Condition.Fixed;
import dev.jetting.rules.json.Condition.OneOf;
import dev.jetting.rules.json.Condition.Scaled;
import dev.jetting.rules.json.Condition.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What some conditions that hold together leave of the settings: an interval of each number, the
 * texts of each name, and numbers held against each other.
 */
record Box(Map<Variable, Interval> numbers, Map<String, Texts> texts, List<Against> against) {

  /** Factors that differ by less count as equal. */
  private static final double ROUNDING = 1e-9;

  static final Box WHOLE = new Box(Map.of(), Map.of(), List.of());

  /** A number of a setting: a measure, and what is taken of it where. */
  record Variable(MeasureDefinition.Numeric definition, Optional<Take> take, ThrottleBand where) {
    static Variable of(Source source, ThrottleBand band) {
      return source.definition() instanceof MeasureDefinition.Swept
          ? new Variable(
              source.definition(),
              Optional.of(source.take()),
              source.within().equals(ThrottleBand.WHOLE) ? band : source.within())
          : new Variable(source.definition(), Optional.empty(), ThrottleBand.WHOLE);
    }

    Interval range() {
      Interval range = MeasureRanges.of(definition);
      return take.equals(Optional.of(Take.MEAN)) ? range.widened() : range;
    }

    /**
     * Whether this number is never above another, except for the rounding of a mean. The lowest of
     * a band is not above what is taken of a part of it, and that is not above the highest.
     */
    boolean isNeverAbove(Variable other) {
      return definition.equals(other.definition)
          && ((take.equals(Optional.of(Take.LOWEST)) && isAllOver(other))
              || (other.take.equals(Optional.of(Take.HIGHEST)) && other.isAllOver(this)));
    }

    private boolean isAllOver(Variable other) {
      return where.contains(other.where.from()) && where.contains(other.where.to());
    }
  }

  /** The texts that are left of a name: these, or all but these. */
  record Texts(boolean these, Set<String> texts) {
    Texts and(Texts other) {
      if (these && other.these) {
        return new Texts(true, Sets.intersection(texts, other.texts).immutableCopy());
      }
      if (these || other.these) {
        Set<String> in = these ? texts : other.texts;
        Set<String> out = these ? other.texts : texts;
        return new Texts(true, Sets.difference(in, out).immutableCopy());
      }
      return new Texts(false, Sets.union(texts, other.texts).immutableCopy());
    }
  }

  /** A number held against a multiple of another. */
  record Against(Variable number, boolean most, boolean strictly, Variable other, double times) {

    boolean isImpossible(Box box) {
      Interval left = box.interval(number);
      Interval right = box.interval(other).times(times);
      boolean apart = most ? left.liesAbove(right, strictly) : right.liesAbove(left, strictly);
      return apart || (number.equals(other) && isOfItself(left));
    }

    /** A number is not less than itself nor, where above zero, than a part of itself. */
    private boolean isOfItself(Interval left) {
      boolean beyond = most ? times < 1 - ROUNDING : times > 1 + ROUNDING;
      return (isAboveZero(left) && beyond) || (strictly && times == 1);
    }

    /** Whether no number is on both sides at once. */
    boolean excludes(Against that, Box box) {
      if (most == that.most || !number.equals(that.number) || !other.equals(that.other)) {
        return false;
      }
      double up = most ? times : that.times;
      double down = most ? that.times : times;
      return up == down
          ? strictly || that.strictly
          : up * (1 + ROUNDING) < down && isAboveZero(box.interval(other));
    }

    private static boolean isAboveZero(Interval interval) {
      return interval.low() > 0 || (interval.low() == 0 && interval.lowOpen());
    }
  }

  Interval interval(Variable number) {
    Interval found = numbers.get(number);
    return found == null ? number.range() : found;
  }

  /** What a bound, or its opposite, leaves of this box. */
  Box with(Bound bound, boolean wanted, ThrottleBand band) {
    Variable number = Variable.of(bound.source(), band);
    boolean most = bound.most() == wanted;
    if (bound.limit() instanceof Fixed fixed) {
      Interval was = interval(number);
      Interval left =
          most ? was.atMost(fixed.number(), !wanted) : was.atLeast(fixed.number(), !wanted);
      return new Box(put(numbers, number, left), texts, against);
    }
    Scaled scaled = (Scaled) bound.limit();
    Against more =
        new Against(number, most, !wanted, Variable.of(scaled.source(), band), scaled.times());
    return new Box(
        numbers, texts, ImmutableList.<Against>builder().addAll(against).add(more).build());
  }

  /** What a text that is one of some, or none of them, leaves of this box. */
  Box with(OneOf oneOf, boolean wanted) {
    String name = oneOf.definition().name();
    Texts more = new Texts(wanted, ImmutableSet.copyOf(oneOf.texts()));
    Texts was = texts.get(name);
    return new Box(numbers, put(texts, name, was == null ? more : was.and(more)), against);
  }

  private static <K, V> Map<K, V> put(Map<K, V> map, K key, V value) {
    return ImmutableMap.<K, V>builder().putAll(map).put(key, value).buildKeepingLast();
  }

  /** Whether surely no setting is left. */
  boolean isEmpty() {
    return numbers.values().stream().anyMatch(Interval::isEmpty)
        || texts.values().stream().anyMatch(left -> left.these() && left.texts().isEmpty())
        || numbers.keySet().stream().anyMatch(this::isOutOfOrder)
        || against.stream().anyMatch(each -> each.isImpossible(this))
        || against.stream()
            .anyMatch(each -> against.stream().anyMatch(that -> each.excludes(that, this)));
  }

  private boolean isOutOfOrder(Variable low) {
    return numbers.keySet().stream()
        .filter(low::isNeverAbove)
        .anyMatch(high -> slackened(low).liesAbove(slackened(high), false));
  }

  private Interval slackened(Variable number) {
    return number.take().equals(Optional.of(Take.MEAN))
        ? interval(number).widened()
        : interval(number);
  }
}
