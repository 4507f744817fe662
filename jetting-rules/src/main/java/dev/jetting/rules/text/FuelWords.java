package dev.jetting.rules.text;

import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelBlend;
import dev.jetting.core.fuel.FuelComponent;
import java.util.Optional;

/** A fuel in words, as its {@code toString} has it in English. */
final class FuelWords {

  private FuelWords() {}

  static Message of(Fuel fuel) {
    Optional<FuelComponent> oil = fuel.oil();
    if (oil.isEmpty()) {
      return liquid(fuel, fuel.toString());
    }
    String premix = " with " + fuel.premix() + " " + oil.get();
    String name = fuel.toString();
    return Message.of("fuel.premix")
        .with(
            "fuel",
            Argument.words(liquid(fuel, name.substring(0, name.length() - premix.length()))))
        .with("ratio", Argument.exact(fuel.premix().petrolToOil(), "1"))
        .with("oil", Argument.name(oil.get().id()));
  }

  private static Message liquid(Fuel fuel, String name) {
    return fuel.blend()
        .filter(blend -> name.contains(" + "))
        .map(FuelWords::mixed)
        .orElse(Message.plain("{name}").with("name", Argument.name(name)));
  }

  private static Message mixed(FuelBlend blend) {
    Message shares = Message.plain("");
    StringBuilder template = new StringBuilder();
    for (int i = 0; i < blend.shares().size(); i++) {
      template.append(i == 0 ? "{" : " + {").append("share").append(i).append("} {id");
      template.append(i).append('}');
      shares =
          shares
              .with("share" + i, Argument.exact(blend.shares().get(i).share(), "1"))
              .with("id" + i, Argument.name(blend.shares().get(i).component().id()));
    }
    boolean volume = blend.basis() == FuelBlend.Basis.VOLUME;
    return Message.of(volume ? "fuel.by-volume" : "fuel.by-mass")
        .with("shares", Argument.words(new Message("", template.toString(), shares.arguments())));
  }
}
