package dev.jetting.units;

import dev.jetting.units.number.TradeNumbers;
import java.util.Objects;

/**
 * Prints quantities as the trade writes them: main 118, cutaway 35, clip 2 of 5 from top, 1½ turns.
 * Rounds to what can be distinguished on a workbench; the text is the same in every locale.
 *
 * <p>For people only. Not for storing or sending values: {@code toString} and {@code parse} of the
 * quantity do not round.
 */
public final class TradeStyle {
  private TradeStyle() {}

  /**
   * Prints a main jet by its bore, to the tenth of a hundredth of a millimetre.
   *
   * @param bore the bore
   * @return such as {@code main 118}
   */
  public static String main(JetBore bore) {
    return "main " + rounded(Objects.requireNonNull(bore, "bore").hundredths(), 1);
  }

  /**
   * Prints a main jet by its flow, to the tenth of a cubic centimetre a minute.
   *
   * @param flow the flow
   * @return such as {@code main 118 cm³/min}
   */
  public static String main(JetFlow flow) {
    return "main "
        + rounded(Objects.requireNonNull(flow, "flow").cubicCentimetresPerMinute(), 1)
        + " cm³/min";
  }

  /**
   * Prints a pilot jet by its bore, to the tenth of a hundredth of a millimetre.
   *
   * @param bore the bore
   * @return such as {@code pilot 45}
   */
  public static String pilot(JetBore bore) {
    return "pilot " + rounded(Objects.requireNonNull(bore, "bore").hundredths(), 1);
  }

  /**
   * Prints a pilot jet by its flow, to the tenth of a cubic centimetre a minute.
   *
   * @param flow the flow
   * @return such as {@code pilot 22.5 cm³/min}
   */
  public static String pilot(JetFlow flow) {
    return "pilot "
        + rounded(Objects.requireNonNull(flow, "flow").cubicCentimetresPerMinute(), 1)
        + " cm³/min";
  }

  /**
   * Prints a diameter, to the thousandth of a millimetre.
   *
   * @param diameter the diameter
   * @return such as {@code 2.485 mm}
   */
  public static String diameter(Diameter diameter) {
    return rounded(Objects.requireNonNull(diameter, "diameter").millimetres(), 3) + " mm";
  }

  /**
   * Prints a slide cutaway in tenths, to the tenth of one.
   *
   * @param cutaway the cutaway
   * @return such as {@code cutaway 35}
   */
  public static String cutaway(Cutaway cutaway) {
    return "cutaway " + rounded(Objects.requireNonNull(cutaway, "cutaway").tenths(), 1);
  }

  /**
   * Prints a clip position from the end that it was given from.
   *
   * @param position the position
   * @return such as {@code clip 2 of 5 from top}
   */
  public static String clip(ClipPosition position) {
    return "clip " + Objects.requireNonNull(position, "position");
  }

  /**
   * Prints a float level, to the tenth of a millimetre.
   *
   * @param level the level
   * @return such as {@code float level 19.5 mm}
   */
  public static String floatLevel(FloatLevel level) {
    return "float level "
        + rounded(Objects.requireNonNull(level, "level").millimetres(), 1)
        + " mm";
  }

  /**
   * Prints a λ, to the hundredth.
   *
   * @param lambda the λ
   * @return such as {@code λ 0.88}
   */
  public static String lambda(Lambda lambda) {
    return "λ " + rounded(Objects.requireNonNull(lambda, "lambda").value(), 2);
  }

  /**
   * Prints an air-fuel ratio, to the tenth.
   *
   * @param ratio the ratio
   * @return such as {@code 12.9:1}
   */
  public static String airFuelRatio(AirFuelRatio ratio) {
    return rounded(Objects.requireNonNull(ratio, "ratio").value(), 1) + ":1";
  }

  /**
   * Prints a temperature in whole degrees Celsius.
   *
   * @param temperature the temperature
   * @return such as {@code 20 °C}
   */
  public static String temperature(Temperature temperature) {
    return rounded(Objects.requireNonNull(temperature, "temperature").celsius(), 0) + " °C";
  }

  /**
   * Prints a pressure in whole hectopascals.
   *
   * @param pressure the pressure
   * @return such as {@code 1013 hPa}
   */
  public static String pressure(Pressure pressure) {
    return rounded(Objects.requireNonNull(pressure, "pressure").hectopascals(), 0) + " hPa";
  }

  /**
   * Prints a relative humidity in whole percent.
   *
   * @param humidity the humidity
   * @return such as {@code 45 %}
   */
  public static String humidity(RelativeHumidity humidity) {
    return rounded(Objects.requireNonNull(humidity, "humidity").percent(), 0) + " %";
  }

  /**
   * Prints an altitude in whole metres.
   *
   * @param altitude the altitude
   * @return such as {@code 850 m}
   */
  public static String altitude(Altitude altitude) {
    return rounded(Objects.requireNonNull(altitude, "altitude").metres(), 0) + " m";
  }

  /**
   * Prints how far a screw is out, in eighths where they fit, otherwise to the hundredth of a turn.
   *
   * @param turns the turns
   * @return such as {@code 1½ turns}
   */
  public static String turns(ScrewTurns turns) {
    double number = Objects.requireNonNull(turns, "turns").turns();
    return TradeNumbers.turns(number) + (TradeNumbers.isOneTurn(number) ? " turn" : " turns");
  }

  /**
   * Prints the setting of a screw.
   *
   * @param kind which screw it is
   * @param turns how far it is out
   * @return such as {@code mixture screw 1½ turns out}
   */
  public static String screw(ScrewKind kind, ScrewTurns turns) {
    Objects.requireNonNull(kind, "kind");
    return (kind == ScrewKind.MIXTURE ? "mixture screw " : "air screw ") + turns(turns) + " out";
  }

  /**
   * Prints a throttle opening, as a fraction down to thirty-seconds where one fits, otherwise in
   * percent.
   *
   * @param opening the opening
   * @return such as {@code closed throttle}, {@code 3/8 throttle}, {@code 40 % throttle} or {@code
   *     full throttle}
   */
  public static String throttle(ThrottleOpening opening) {
    double percent = Objects.requireNonNull(opening, "opening").percent();
    String fraction = TradeNumbers.fraction(percent).orElseGet(() -> rounded(percent, 1) + " %");
    return switch (fraction) {
          case "0" -> "closed";
          case "1" -> "full";
          default -> fraction;
        }
        + " throttle";
  }

  /**
   * Prints an engine speed in whole revolutions a minute.
   *
   * @param speed the speed
   * @return such as {@code 7500 rpm}
   */
  public static String speed(EngineSpeed speed) {
    return rounded(Objects.requireNonNull(speed, "speed").rpm(), 0) + " rpm";
  }

  /**
   * Prints a premix ratio.
   *
   * @param ratio the ratio
   * @return such as {@code premix 50:1} or {@code no oil}
   */
  public static String premix(PremixRatio ratio) {
    return Objects.requireNonNull(ratio, "ratio").hasOil()
        ? "premix " + rounded(ratio.petrolToOil(), 1) + ":1"
        : ratio.toString();
  }

  /**
   * Prints a probability in whole percent; what is not certain is not printed as certain.
   *
   * @param probability the probability
   * @return such as {@code 5 %}, {@code under 1 %}, {@code over 99 %}, {@code 0 %} or {@code 100 %}
   */
  public static String probability(Probability probability) {
    return text(TradeNumbers.percent(Objects.requireNonNull(probability, "probability").value()));
  }

  /**
   * Prints a probability beside a limit that is printed with {@link #probability}: with enough
   * decimals to distinguish the two. So 10.4 % beside a limit of 10 % is not printed as "10 %".
   *
   * @param probability the probability
   * @param limit the limit
   * @return such as {@code 12 %} beside 10 %, {@code 10.4 %} beside 10 %, {@code just over 10 %}
   *     where four decimals do not distinguish them; the limit's own text if they are equal
   */
  public static String probability(Probability probability, Probability limit) {
    double value = Objects.requireNonNull(probability, "probability").value();
    return text(TradeNumbers.percent(value, Objects.requireNonNull(limit, "limit").value()));
  }

  private static String text(TradeNumbers.Percent percent) {
    String bound =
        switch (percent.bound()) {
          case AT -> "";
          case UNDER -> "under ";
          case OVER -> "over ";
          case JUST_UNDER -> "just under ";
          case JUST_OVER -> "just over ";
        };
    return bound + percent.number() + " %";
  }

  private static String rounded(double value, int decimals) {
    return TradeNumbers.rounded(value, decimals);
  }
}
