package dev.jetting.units.number;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The numbers that the trade writes, without words and units, so that they are rounded in one place
 * for every language.
 */
public final class TradeNumbers {
  private static final String[] EIGHTHS = {"", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"};

  /** In eighths of a turn: a difference that two decimals of a turn do not show, and rounding. */
  private static final double SAME_TURN = 0.0401;

  /** Openings are printed as fractions; the denominator is a power of two, at most this one. */
  private static final int FINEST = 128;

  /**
   * As a share of full lift: a difference that one decimal of a per cent does not show, and
   * rounding.
   */
  private static final double SAME_OPENING = 0.000501;

  private static final int FINEST_PERCENT = 4;

  private TradeNumbers() {}

  /** How a percentage stands to the number that is printed for it. */
  public enum Bound {
    /** It is the number, rounded. */
    AT,
    /** It is below the number, and not rounded to it. */
    UNDER,
    /** It is above the number, and not rounded to it. */
    OVER,
    /** It is below the number by less than can be printed. */
    JUST_UNDER,
    /** It is above the number by less than can be printed. */
    JUST_OVER
  }

  /**
   * A percentage as it is printed.
   *
   * @param bound how it stands to the number
   * @param number the number of per cent
   */
  public record Percent(Bound bound, String number) {}

  /**
   * Rounds a number.
   *
   * @param value any finite number
   * @param decimals digits after the point at most, 0 or more
   * @return the rounded number without trailing zeros
   */
  public static String rounded(double value, int decimals) {
    BigDecimal rounded = new BigDecimal(Decimals.fixed(value, decimals));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /**
   * Rounds how far a screw is out.
   *
   * @param turns the turns, 0 or more
   * @return in eighths where they fit, such as {@code 1½}, otherwise to the hundredth
   */
  public static String turns(double turns) {
    double number = shown(turns, 2);
    long eighths = eighths(number);
    if (eighths < 0) {
      return rounded(number, 2);
    }
    String whole = eighths >= 8 || eighths == 0 ? Long.toString(eighths / 8) : "";
    return whole + EIGHTHS[(int) (eighths % 8)];
  }

  /**
   * Returns whether a turn or a part of one is printed, so the noun is singular.
   *
   * @param turns the turns, 0 or more
   * @return true from an eighth to a turn
   */
  public static boolean isOneTurn(double turns) {
    long eighths = eighths(shown(turns, 2));
    return eighths >= 1 && eighths <= 8;
  }

  /** The eighths of a number; below zero where they do not fit. */
  private static long eighths(double number) {
    long eighths = (long) Math.rint(number * 8);
    return Math.abs(number * 8 - eighths) > SAME_TURN ? -1 : eighths;
  }

  /**
   * Finds the fraction of a throttle opening.
   *
   * @param percent the opening in per cent, 0 to 100
   * @return such as {@code 3/8}; {@code 0} closed and {@code 1} fully open; empty where none fits
   */
  public static Optional<String> fraction(double percent) {
    double share = shown(percent, 1) / 100;
    int parts = (int) Math.rint(share * FINEST);
    if (Math.abs(share - parts / (double) FINEST) > SAME_OPENING) {
      return Optional.empty();
    }
    if (parts == 0 || parts == FINEST) {
      return Optional.of(parts == 0 ? "0" : "1");
    }
    int common = Integer.lowestOneBit(parts);
    return Optional.of(parts / common + "/" + FINEST / common);
  }

  /**
   * Rounds a probability to whole per cent; what is not certain is not printed as certain.
   *
   * @param value the probability, 0 to 1
   * @return the percentage
   */
  public static Percent percent(double value) {
    if (value > 0 && value < 0.01) {
      return new Percent(Bound.UNDER, "1");
    }
    if (value > 0.99 && value < 1) {
      return new Percent(Bound.OVER, "99");
    }
    return new Percent(Bound.AT, rounded(value * 100, 0));
  }

  /**
   * Rounds a probability that stands beside a limit, with enough decimals to distinguish the two.
   *
   * @param value the probability, 0 to 1
   * @param limit the limit, 0 to 1
   * @return the percentage
   */
  public static Percent percent(double value, double limit) {
    Percent shown = percent(value);
    Percent of = percent(limit);
    int order = Double.compare(value, limit);
    if (order == 0 || !shown.equals(of)) {
      return shown;
    }
    for (int decimals = 1; decimals <= FINEST_PERCENT; decimals++) {
      String finer = rounded(value * 100, decimals);
      boolean differs = of.bound() != Bound.AT || !finer.equals(of.number());
      if (differs && !finer.equals(rounded(limit * 100, decimals))) {
        return new Percent(Bound.AT, finer);
      }
    }
    if (of.bound() != Bound.AT) {
      return shown;
    }
    return new Percent(order > 0 ? Bound.JUST_OVER : Bound.JUST_UNDER, of.number());
  }

  /** The number that a reader gets back from a print with the given decimals. */
  private static double shown(double value, int decimals) {
    return Double.parseDouble(Decimals.fixed(value, decimals));
  }
}
