package dev.jetting.examples.kitdesk;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Family;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartShape;
import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.NeedlePosition;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The parts that are on the engine: those of the sheet's setting. */
record SheetParts(Setting setting) {

  /** Ids of the parts of a catalogue that are the same to the mixture model. */
  Set<String> ids(Catalogue catalogue, Family family) {
    return catalogue.parts().stream()
        .filter(part -> catalogue.fits(part, family) && has(catalogue, part))
        .map(Part::id)
        .collect(Collectors.toSet());
  }

  private boolean has(Catalogue catalogue, Part part) {
    if (part.shape() instanceof PartShape.Slide slide) {
      return slide.cutaway().equals(setting.cutaway());
    }
    if (part.shape() instanceof PartShape.NeedleJetShape tube) {
      return tube.needleJet().equals(setting.needleJet());
    }
    if (part.shape() instanceof PartShape.NeedleShape rod) {
      return isNeedle(rod.needle());
    }
    return switch (catalogue.kind(part)) {
      case PILOT_JET -> catalogue.boreOf(part).equals(setting.pilotJet());
      case MAIN_JET -> catalogue.boreOf(part).equals(setting.mainJet());
      case NEEDLE_JET, SLIDE, NEEDLE, SCREW, FLOAT_VALVE -> false;
    };
  }

  /** Whether a needle is the setting's, whatever it is called. */
  private boolean isNeedle(Needle needle) {
    Needle own = setting.needle();
    return Needle.builder()
        .id(own.id())
        .cylinder(needle.cylinder())
        .tapers(needle.tapers())
        .grooves(needle.grooves())
        .groovePitch(needle.groovePitch())
        .tip(needle.tip())
        .build()
        .equals(own);
  }

  /** Choices with those parts too that the catalogue does not have. */
  Choices with(Choices choices) {
    boolean needleIsThere =
        choices.needles().stream().anyMatch(choice -> isNeedle(choice.part().needle()));
    return choices
        .withPilotJets(with(choices.pilotJets(), setting.pilotJet()))
        .withCutaways(with(choices.cutaways(), setting.cutaway()))
        .withNeedleJets(with(choices.needleJets(), setting.needleJet()))
        .withNeedles(
            needleIsThere
                ? choices.needles()
                : with(choices.needles(), NeedlePosition.inAnyGroove(setting.needle())))
        .withMainJets(with(choices.mainJets(), setting.mainJet()));
  }

  private static <P> List<Choice<P>> with(List<Choice<P>> choices, P own) {
    return choices.stream().anyMatch(choice -> choice.part().equals(own))
        ? choices
        : Stream.concat(Stream.of(Choice.ofOwned(own)), choices.stream()).toList();
  }

  /** This setting with its needle as the catalogue calls it, so that it can be found there. */
  Setting calledAs(Choices choices) {
    return choices.needles().stream()
        .map(choice -> choice.part().needle())
        .filter(this::isNeedle)
        .findFirst()
        .map(needle -> setting.withNeedle(needle, setting.clip()))
        .orElse(setting);
  }
}
