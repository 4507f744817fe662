package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.typical.Cooling;
import dev.jetting.core.typical.StateOfTune;
import dev.jetting.examples.shopcounter.words.Refusal;
import dev.jetting.examples.shopcounter.words.Typed;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.MachineDescription;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.RiderInput;
import dev.jetting.units.ScrewKind;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What a rider says of a machine in two minutes, and what is wrong with it. */
public final class MachineForm {

  private static final Map<String, String> AT_FIRST =
      Map.of(
          "tune",
          "standard",
          "induction",
          "piston_port",
          "cooling",
          "air",
          "screw",
          "air",
          "grooves",
          "5",
          "turns",
          "1½",
          "height",
          "0 m",
          "temperature",
          "20 °C",
          "premix",
          "50:1");

  private final Function<String, @Nullable String> said;
  private final Words words;
  private final Map<String, String> mistakes = new LinkedHashMap<>();

  /**
   * Creates a form.
   *
   * @param said what was said in each field, by its name; null where nothing was
   * @param words the language of the page
   */
  public MachineForm(Function<String, @Nullable String> said, Words words) {
    this.said = said;
    this.words = words;
  }

  /**
   * Creates a form as it is first shown.
   *
   * @param words the language of the page
   * @return the form
   */
  public static MachineForm empty(Words words) {
    return new MachineForm(name -> null, words);
  }

  /**
   * Returns what was said in a field.
   *
   * @param field the field's name
   * @return the text, or what the form begins with
   */
  public String value(String field) {
    String text = said.apply(field);
    return text == null ? atFirst(field) : text.strip();
  }

  private String atFirst(String field) {
    return field.equals("clip") ? words.say("new.clip.first") : AT_FIRST.getOrDefault(field, "");
  }

  /**
   * Returns what is wrong with a field.
   *
   * @param field the field's name
   * @return the mistake in a sentence; empty where there is none
   */
  public String mistake(String field) {
    return mistakes.getOrDefault(field, "");
  }

  /** {@return whether anything is wrong} */
  public boolean hasMistakes() {
    return !mistakes.isEmpty();
  }

  /**
   * Makes the machine.
   *
   * @return the machine; empty where something is wrong, which the form then says
   */
  public Optional<MachineDescription> machine() {
    MachineDescription.Builder builder = MachineDescription.builder().usualParts();
    builder.title(value("name").isEmpty() ? value("displacement") : value("name"));
    chosen(builder);
    read("displacement", text -> builder.displacement(RiderInput.displacement(text)));
    read("bore", text -> builder.bore(RiderInput.diameter(text)));
    read("main", text -> builder.mainJet(RiderInput.mainJet(text)));
    read("pilot", text -> builder.pilotJet(RiderInput.pilotJet(text)));
    read("needlejet", text -> builder.needleJet(RiderInput.diameter(text)));
    read("cutaway", text -> builder.cutaway(RiderInput.cutaway(text)));
    read("turns", text -> builder.screw(new Screw(screwKind(), RiderInput.turns(text))));
    read("clip", text -> builder.clip(RiderInput.clip(text, grooves())));
    read("height", text -> builder.altitude(RiderInput.altitude(Typed.large(words, text))));
    read("temperature", text -> builder.temperature(RiderInput.temperature(text)));
    read("premix", text -> builder.fuel(Fuel.E5.withPremix(RiderInput.premix(text))));
    needle(builder);
    return hasMistakes() ? Optional.empty() : built(builder);
  }

  private void chosen(MachineDescription.Builder builder) {
    choice("tune", StateOfTune.class).ifPresent(builder::tune);
    choice("induction", InductionKind.class).ifPresent(builder::induction);
    choice("cooling", Cooling.class).ifPresent(builder::cooling);
  }

  private void needle(MachineDescription.Builder builder) {
    String id = value("needle").isEmpty() ? "unmarked" : value("needle");
    if (value("thickness").isEmpty()) {
      builder.needle(id);
    } else {
      read("thickness", text -> builder.needle(id, RiderInput.diameter(text)));
    }
  }

  private Optional<MachineDescription> built(MachineDescription.Builder builder) {
    try {
      return Optional.of(builder.build());
    } catch (IllegalArgumentException e) {
      mistakes.put("all", words.say(e));
      return Optional.empty();
    }
  }

  private ScrewKind screwKind() {
    return choice("screw", ScrewKind.class).orElse(ScrewKind.AIR);
  }

  private int grooves() {
    try {
      return Integer.parseInt(value("grooves"));
    } catch (NumberFormatException e) {
      throw new Refusal(Words.message("new.say-grooves"));
    }
  }

  private void read(String field, Consumer<String> use) {
    String text = value(field);
    if (text.isEmpty()) {
      mistakes.put(field, words.say("new.missing"));
      return;
    }
    try {
      use.accept(field.equals("height") ? text : Typed.plain(words, text));
    } catch (Refusal e) {
      mistakes.put(field, words.say(e));
    } catch (IllegalArgumentException e) {
      mistakes.put(field, words.say(withoutExample(Message.of(e))));
    }
  }

  /** The library's examples are in English; the hint beside the field has one in the language. */
  private static Message withoutExample(Message message) {
    return message.arguments().containsKey("sample")
            && message.arguments().get("problem") instanceof Argument.Words problem
        ? problem.message()
        : message;
  }

  private <E extends Enum<E>> Optional<E> choice(String field, Class<E> kind) {
    for (E one : kind.getEnumConstants()) {
      if (one.name().toLowerCase(Locale.ROOT).equals(value(field))) {
        return Optional.of(one);
      }
    }
    mistakes.put(field, words.say("new.choose", "value", value(field)));
    return Optional.empty();
  }
}
