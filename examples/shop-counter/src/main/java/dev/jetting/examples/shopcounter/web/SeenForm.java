package dev.jetting.examples.shopcounter.web;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.IdleAnswer;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.RunDown;
import dev.jetting.rules.tuning.Symptom;
import dev.jetting.units.Lambda;
import dev.jetting.units.RiderInput;
import dev.jetting.units.TemperatureDifference;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a rider saw, from the form of the session's page. */
final class SeenForm {

  private final Function<String, @Nullable String> said;

  private SeenForm(Function<String, @Nullable String> said) {
    this.said = said;
  }

  /**
   * Reads the form.
   *
   * @param said what was said in each field, by its name; null where nothing was
   * @param good the λ of a good run at that opening, where the form names none
   */
  static Evidence evidence(Function<String, @Nullable String> said, Lambda good) {
    return new SeenForm(said).evidence(good);
  }

  private Evidence evidence(Lambda good) {
    String seen = text("seen");
    if (seen.equals("lambda")) {
      return new Evidence.Wideband(RiderInput.lambda(text("lambda")));
    }
    if (seen.equals("exhaust")) {
      return new Evidence.ExhaustTemperature(
          hotter(), text("good").isEmpty() ? good : RiderInput.lambda(text("good")));
    }
    return Stream.of(
            named(PlugColour.values(), key -> key, seen).map(Evidence.Colour::new),
            named(RunDown.values(), key -> "run_" + key, seen).map(Evidence.Overrun::new),
            named(IdleAnswer.values(), key -> "idle_" + key, seen).map(Evidence.Idle::new),
            named(Symptom.values(), key -> key, seen).map(Evidence.Felt::new))
        .flatMap(Optional::stream)
        .map(Evidence.class::cast)
        .findFirst()
        .orElseThrow(() -> Problem.unusable(Words.message("session.say-what")));
  }

  /** A plain number counts as kelvin, which are degrees Celsius. */
  private TemperatureDifference hotter() {
    String text = text("hotter").replace('−', '-');
    boolean plain = text.matches("[+-]?[0-9.]+");
    return TemperatureDifference.parse(plain ? text + " K" : text);
  }

  private static <E extends Enum<E>> Optional<E> named(
      E[] all, UnaryOperator<String> naming, String seen) {
    return Arrays.stream(all)
        .filter(one -> naming.apply(one.name().toLowerCase(Locale.ROOT)).equals(seen))
        .findFirst();
  }

  private String text(String field) {
    return Objects.requireNonNullElse(said.apply(field), "").strip();
  }
}
