package dev.jetting.rules.text;

import static java.util.stream.Collectors.joining;

import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.number.Decimals;
import dev.jetting.units.number.TradeNumbers;
import java.util.Optional;

/** Values in the words of one language, as {@code TradeStyle} prints them in English. */
record Printer(Wording wording) {

  private static final int MOST_DECIMALS = 6;

  String text(Argument argument) {
    if (argument instanceof Argument.Name name) {
      return name.text();
    }
    if (argument instanceof Argument.Words words) {
      return wording.text(words.message());
    }
    if (argument instanceof Argument.Items items) {
      return items.items().stream().map(this::text).collect(joining(", "));
    }
    if (argument instanceof Argument.Fixed fixed) {
      return united(Decimals.fixed(fixed.value(), fixed.decimals()), fixed.unit());
    }
    return argument instanceof Argument.Measured measured
        ? text(measured)
        : text((Argument.Amount) argument);
  }

  private String text(Argument.Measured measured) {
    double value = measured.value();
    int decimals = Math.abs(value) < 10 ? 3 : Math.abs(value) < 100 ? 2 : 0;
    return united(
        measured.exact() ? Decimals.shortest(value) : Decimals.fixed(value, decimals),
        measured.unit());
  }

  private String united(String number, String unit) {
    return unit.equals("1") ? number(number) : number(number) + " " + unit(unit);
  }

  /** A unit that is a word in one language has another in the next. */
  private String unit(String unit) {
    return wording.text(Message.named("unit", unit));
  }

  private String text(Argument.Amount amount) {
    double value = amount.value();
    return switch (amount.style()) {
      case THROTTLE, OPENING -> opening(amount.style(), value);
      case LAMBDA -> filled("lambda", lambda(value, amount.beside()));
      case LAMBDA_SHORT -> filled("lambda", rounded(value, 2));
      case LAMBDA_NUMBER -> lambda(value, Optional.empty());
      case RISK -> risk(value, amount.beside());
      case SHARE -> percent(Decimals.fixed(value * 100, 0));
      case CHANGE -> change(Decimals.fixed(value * 100, 0));
      case MAIN_JET -> filled("main-jet", rounded(JetBore.ofMillimetres(value).hundredths(), 1));
      case PILOT_JET -> filled("pilot-jet", rounded(JetBore.ofMillimetres(value).hundredths(), 1));
      case NEEDLE_JET -> filled("needle-jet", rounded(value, 3));
      case DIAMETER -> filled("diameter", rounded(value, 3));
      case CUTAWAY -> filled("cutaway", rounded(Cutaway.ofMillimetres(value).tenths(), 1));
      case TURNS ->
          filled(
              TradeNumbers.isOneTurn(value) ? "turn" : "turns", number(TradeNumbers.turns(value)));
      case TEMPERATURE -> filled("temperature", rounded(value, 0));
      case PRESSURE -> filled("pressure", rounded(value, 0));
      case HUMIDITY -> percent(rounded(RelativeHumidity.ofShare(value).percent(), 0));
      case SPEED -> filled("speed", Decimals.fixed(value, 0));
      case COUNT -> number(Decimals.shortest(value));
    };
  }

  private String opening(Argument.Style style, double share) {
    double percent = ThrottleOpening.ofShare(share).percent();
    String opening = TradeNumbers.fraction(percent).orElseGet(() -> percent(rounded(percent, 1)));
    String word = style == Argument.Style.THROTTLE ? "throttle." : "opening.";
    return switch (opening) {
      case "0" -> wording.words(word + "closed");
      case "1" -> wording.words(word + "full");
      default -> style == Argument.Style.THROTTLE ? filled("throttle.part", opening) : opening;
    };
  }

  private String lambda(double value, Optional<Double> beside) {
    int decimals = 2;
    while (beside.isPresent()
        && decimals < MOST_DECIMALS
        && Decimals.fixed(value, decimals).equals(Decimals.fixed(beside.get(), decimals))) {
      decimals++;
    }
    return number(Decimals.fixed(value, decimals));
  }

  private String risk(double value, Optional<Double> limit) {
    TradeNumbers.Percent shown =
        limit
            .map(of -> TradeNumbers.percent(value, of))
            .orElseGet(() -> TradeNumbers.percent(value));
    String percent = percent(number(shown.number()));
    return switch (shown.bound()) {
      case AT -> percent;
      case UNDER -> filled("percent.under", percent);
      case OVER -> filled("percent.over", percent);
      case JUST_UNDER -> filled("percent.just-under", percent);
      case JUST_OVER -> filled("percent.just-over", percent);
    };
  }

  private String change(String percent) {
    return percent.equals("0") ? filled("percent.less", percent("1")) : percent(percent);
  }

  private String percent(String number) {
    return filled("percent", number);
  }

  private String rounded(double value, int decimals) {
    return number(TradeNumbers.rounded(value, decimals));
  }

  String number(String decimal) {
    return decimal.replace(".", wording.words("number.point"));
  }

  private String filled(String key, String number) {
    return Message.filled(wording.words(key), name -> Optional.of(number));
  }
}
