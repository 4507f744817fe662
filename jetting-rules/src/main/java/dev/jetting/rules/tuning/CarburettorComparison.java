package dev.jetting.rules.tuning;

import static java.util.stream.Collectors.joining;

import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.rules.tuning.CarburettorRating.Cruise;
import dev.jetting.units.FuelConsumption;
import dev.jetting.units.Power;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Carburettors compared for one engine, a power target and a use. The comparison has the power that
 * each leaves, its signal at low speed, what it burns when cruising, and its price.
 *
 * <p>For choosing a bore. It does not predict power: the caller says what the engine would make
 * without any restriction.
 *
 * @param target the power wanted at the crankshaft
 * @param lines a line for each carburettor, in the order they were offered; at least one
 */
public record CarburettorComparison(Power target, List<Line> lines) {

  /** A weaker signal at low speed, by the head of fuel, feeds unsteadily (assumed). */
  public static final double LEAST_SIGNAL = 2;

  /**
   * Checks the lines.
   *
   * @param target the power wanted at the crankshaft
   * @param lines a line for each carburettor, in the order they were offered; at least one
   * @throws IllegalArgumentException if there is no line
   */
  public CarburettorComparison {
    Objects.requireNonNull(target, "target");
    lines = List.copyOf(lines);
    if (lines.isEmpty()) {
      throw new IllegalArgumentException("carburettors to compare: allowed at least one");
    }
  }

  /**
   * A carburettor on offer.
   *
   * @param setup engine and carburettor, jetted as it would be ridden
   * @param price of the carburettor, in the caller's own currency, zero or more; empty if unknown
   * @param jetsPrice of the jets to be bought with it, likewise
   */
  public record Offer(Setup setup, Optional<BigDecimal> price, Optional<BigDecimal> jetsPrice) {
    /**
     * Checks the prices.
     *
     * @param setup engine and carburettor, jetted as it would be ridden
     * @param price of the carburettor, zero or more; empty if unknown
     * @param jetsPrice of the jets to be bought with it, likewise
     * @throws IllegalArgumentException if a price is below zero
     */
    public Offer {
      Objects.requireNonNull(setup, "setup");
      price.ifPresent(p -> check("price of the carburettor", p));
      jetsPrice.ifPresent(p -> check("price of the jets", p));
    }

    private static void check(String what, BigDecimal price) {
      if (price.signum() < 0) {
        throw new IllegalArgumentException(
            what + " " + price.toPlainString() + ": allowed 0 or more");
      }
    }

    /** Both prices together; empty if one is unknown. */
    Optional<BigDecimal> cost() {
      return price.flatMap(p -> jetsPrice.map(p::add));
    }
  }

  /**
   * What a carburettor does.
   *
   * @param rating restriction, signal and consumption
   * @param power what it leaves of the power
   * @param cost of carburettor and jets together; empty if a price is unknown
   */
  public record Line(CarburettorRating rating, Power power, Optional<BigDecimal> cost) {
    /**
     * Checks for nulls.
     *
     * @param rating restriction, signal and consumption
     * @param power what it leaves of the power
     * @param cost of carburettor and jets together; empty if a price is unknown
     */
    public Line {
      Objects.requireNonNull(rating, "rating");
      Objects.requireNonNull(power, "power");
      Objects.requireNonNull(cost, "cost");
    }

    /** {@return whether its signal at low speed feeds steadily} */
    public boolean feedsSteadily() {
      return rating.lowSignal() >= LEAST_SIGNAL;
    }
  }

  /**
   * Compares carburettors.
   *
   * @param offers the carburettors, all on the same engine in the same air; at least one
   * @param unrestricted what the engine would make at its power peak without any restriction
   * @param target the power wanted
   * @param cruise the cruising load
   * @return the comparison
   * @throws IllegalArgumentException if there is no offer, the offers are on different engines, in
   *     different air or with different fuel, or one does not pass the cruising load's air
   */
  public static CarburettorComparison of(
      List<Offer> offers, Power unrestricted, Power target, Cruise cruise) {
    List<Line> lines = new ArrayList<>();
    for (Offer offer : offers) {
      Setup first = offers.get(0).setup();
      if (!offer.setup().withSetting(first.setting()).equals(first)) {
        throw new IllegalArgumentException(
            "carburettors to compare: allowed on one engine, in one air and with one fuel");
      }
      CarburettorRating rating = CarburettorRating.of(offer.setup(), cruise);
      double kilowatts = unrestricted.kilowatts() * (1 - rating.powerLost());
      lines.add(new Line(rating, Power.ofKilowatts(kilowatts), offer.cost()));
    }
    return new CarburettorComparison(target, lines);
  }

  /** {@return whether a carburettor leaves the power wanted} */
  private boolean reaches(Line line) {
    return line.power().compareTo(target) >= 0;
  }

  /**
   * The carburettor to choose: the cheapest of those that leave the power wanted and feed steadily.
   * If a cost is unknown or equal, it is the smallest bore, which gives its jets the strongest
   * signal.
   *
   * @return its line; empty if none does both
   */
  public Optional<Line> choice() {
    List<Line> fit = lines.stream().filter(l -> reaches(l) && l.feedsSteadily()).toList();
    Comparator<Line> smallest = Comparator.comparing(line -> line.rating().carburettor().bore());
    boolean priced = fit.stream().allMatch(line -> line.cost().isPresent());
    Comparator<Line> cheapest = Comparator.comparing(line -> line.cost().orElse(BigDecimal.ZERO));
    return fit.stream().min(priced ? cheapest.thenComparing(smallest) : smallest);
  }

  /**
   * A table for people, lines ended by {@code \n}: bore, power lost and left, signal at low speed,
   * consumption when cruising, and cost, "?" where it is unknown.
   *
   * @return the table, with a line below that states the choice
   */
  public String text() {
    return text(Wording.english());
  }

  /**
   * The same table in the words of a language.
   *
   * @param wording the words
   * @return the table, with a line below that states the choice
   */
  public String text(Wording wording) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        Stream.of("bore", "lost", "left", "signal", "cruising", "cost")
            .map(heading -> wording.text(Message.of("carburettors." + heading)))
            .toList());
    lines.forEach(line -> rows.add(cells(line).map(wording::text).toList()));
    return rows.stream().map(row -> row(row, rows.get(0))).collect(joining())
        + wording.text(conclusion())
        + "\n";
  }

  private static Stream<Argument> cells(Line line) {
    CarburettorRating rating = line.rating();
    Argument signal = Argument.fixed(rating.lowSignal(), "1", 1);
    FuelConsumption cruising = rating.cruiseConsumption();
    return Stream.of(
        Argument.diameter(rating.carburettor().bore()),
        Argument.fixed(100 * rating.powerLost(), "%", 1),
        horsepower(line.power()),
        line.feedsSteadily()
            ? signal
            : Argument.words(Message.of("carburettors.weak").with("number", signal)),
        Argument.items(
            List.of(
                Argument.fixed(cruising.litresPer100Kilometres(), "L/100 km", 2),
                Argument.fixed(cruising.milesPerImperialGallon(), "mpg", 0))),
        Argument.name(line.cost().map(BigDecimal::toPlainString).orElse("?")));
  }

  private Message conclusion() {
    Argument power = horsepower(target);
    return choice()
        .map(line -> Argument.diameter(line.rating().carburettor().bore()))
        .map(bore -> Message.of("carburettors.choose").with("bore", bore))
        .orElse(Message.of("carburettors.none"))
        .with("power", power);
  }

  private static Argument horsepower(Power power) {
    return Argument.fixed(power.metricHorsepower(), "hp", 1);
  }

  private static String row(List<String> cells, List<String> headings) {
    int[] widths = {7, 10, 10, 10, 22};
    StringBuilder row = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      int width = Math.max(widths[i], headings.get(i).length());
      row.append(cells.get(i)).append(" ".repeat(Math.max(0, width - cells.get(i).length())));
      row.append("  ");
    }
    return row.append(cells.get(widths.length)).append('\n').toString();
  }
}
