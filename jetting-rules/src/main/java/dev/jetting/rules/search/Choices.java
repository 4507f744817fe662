package dev.jetting.rules.search;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewTurns;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The parts of one carburettor among which a setting can be chosen: every combination of one of
 * each kind. The order of the lists decides between settings that are equal in all else.
 *
 * <p>A combination that cannot be put together, such as a needle too thick for the needle jet, is
 * no error here; a search passes over it and counts it.
 *
 * @param pilotJets the pilot jets; at least one, none twice
 * @param screws turns at which the screw of the pilot circuit may stand; at least one, none twice
 * @param cutaways the slides, by their cutaway; at least one, none twice
 * @param needleJets the needle jets; at least one, none twice
 * @param needles the needles with the grooves that are allowed; at least one, none twice
 * @param mainJets the main jets; at least one, none twice
 */
public record Choices(
    List<Choice<JetBore>> pilotJets,
    List<ScrewTurns> screws,
    List<Choice<Cutaway>> cutaways,
    List<Choice<NeedleJet>> needleJets,
    List<Choice<NeedlePosition>> needles,
    List<Choice<JetBore>> mainJets) {

  private static final double QUARTER_TURN = 0.25;

  /** How far from the sheet's own a screw is tried: half a turn (assumed: its trimming range). */
  private static final int QUARTERS_EITHER_WAY = 2;

  /** Below half a turn a screw is hardly off its seat (assumed, as by the rulebook). */
  private static final double LEAST_TURNS = 0.5;

  /**
   * Checks the lists.
   *
   * @param pilotJets the pilot jets
   * @param screws turns at which the screw of the pilot circuit may stand
   * @param cutaways the slides, by their cutaway
   * @param needleJets the needle jets
   * @param needles the needles with the grooves that are allowed
   * @param mainJets the main jets
   * @throws IllegalArgumentException if a list is empty or holds a part twice
   */
  public Choices {
    pilotJets = checked("pilot jet", pilotJets);
    screws = List.copyOf(screws);
    noneTwice("screw position", screws);
    atLeastOne("screw position", screws);
    cutaways = checked("cutaway", cutaways);
    needleJets = checked("needle jet", needleJets);
    needles = checked("needle", needles);
    noneTwice("needle", needles.stream().map(choice -> choice.part().needle()).toList());
    mainJets = checked("main jet", mainJets);
  }

  /**
   * The parts of a sheet. Those in its setting are owned. Those at hand are to be bought, because a
   * sheet does not state which of them the rider has; {@link #allOwned()} makes them all owned. The
   * clip may sit in any groove. The screw may stand at the setting's turns and at the quarter turns
   * up to half a turn from there, from half a turn to the most that the circuit takes.
   *
   * @param sheet the sheet
   * @return the choices; the setting's own part comes first in each list
   */
  public static Choices of(SetupSheet sheet) {
    Setting setting = sheet.setup().setting();
    PartsAtHand parts = sheet.parts();
    return new Choices(
        ownAndMore(setting.pilotJet(), parts.pilotJets()),
        screwsAround(setting),
        ownAndMore(setting.cutaway(), parts.cutaways()),
        ownAndMore(setting.needleJet(), parts.needleJets()),
        ownAndMore(
            NeedlePosition.inAnyGroove(setting.needle()),
            parts.needles().stream().map(NeedlePosition::inAnyGroove).toList()),
        ownAndMore(setting.mainJet(), parts.mainJets()));
  }

  private static <P> List<Choice<P>> ownAndMore(P own, List<P> more) {
    return Stream.concat(
            Stream.of(Choice.ofOwned(own)),
            more.stream().distinct().filter(part -> !part.equals(own)).map(Choice::toBuy))
        .toList();
  }

  private static List<ScrewTurns> screwsAround(Setting setting) {
    double own = setting.screw().turns().turns();
    double most = setting.carburettor().pilot().mostTurns().turns();
    List<ScrewTurns> turns = new ArrayList<>();
    turns.add(setting.screw().turns());
    for (int quarters = -QUARTERS_EITHER_WAY; quarters <= QUARTERS_EITHER_WAY; quarters++) {
      double other = own + quarters * QUARTER_TURN;
      if (quarters != 0 && other >= LEAST_TURNS && other <= most) {
        turns.add(ScrewTurns.of(other));
      }
    }
    return turns;
  }

  /** {@return these choices with every part owned} */
  public Choices allOwned() {
    return new Choices(
        owned(pilotJets),
        screws,
        owned(cutaways),
        owned(needleJets),
        owned(needles),
        owned(mainJets));
  }

  private static <P> List<Choice<P>> owned(List<Choice<P>> choices) {
    return choices.stream().map(choice -> choice.withSource(Choice.Source.OWNED)).toList();
  }

  /**
   * These choices with a part kept as a setting has it.
   *
   * @param kind which part is kept
   * @param setting the setting that has it
   * @return the choices with that part alone, owned if it was not among them; keeping the clip
   *     leaves out the needles that do not have its groove
   * @throws IllegalArgumentException if the clip is kept and no needle has that groove
   */
  public Choices keeping(PartKind kind, Setting setting) {
    return switch (kind) {
      case PILOT_JET -> withPilotJets(only(setting.pilotJet(), pilotJets));
      case SCREW -> withScrews(List.of(setting.screw().turns()));
      case SLIDE -> withCutaways(only(setting.cutaway(), cutaways));
      case NEEDLE_JET -> withNeedleJets(only(setting.needleJet(), needleJets));
      case NEEDLE -> withNeedles(List.of(own(setting.needle())));
      case CLIP -> withNeedles(inGroove(setting.clip()));
      case MAIN_JET -> withMainJets(only(setting.mainJet(), mainJets));
    };
  }

  private static <P> List<Choice<P>> only(P part, List<Choice<P>> choices) {
    return List.of(
        choices.stream()
            .filter(choice -> choice.part().equals(part))
            .findFirst()
            .orElse(Choice.ofOwned(part)));
  }

  private Choice<NeedlePosition> own(Needle needle) {
    return needles.stream()
        .filter(choice -> choice.part().needle().equals(needle))
        .findFirst()
        .orElse(Choice.ofOwned(NeedlePosition.inAnyGroove(needle)));
  }

  private List<Choice<NeedlePosition>> inGroove(ClipPosition clip) {
    return needles.stream()
        .filter(choice -> choice.part().clips().contains(clip))
        .map(choice -> choice.withPart(new NeedlePosition(choice.part().needle(), List.of(clip))))
        .toList();
  }

  /**
   * These choices with other pilot jets.
   *
   * @param others the pilot jets
   * @return the changed choices
   * @throws IllegalArgumentException if there is none or one twice
   */
  public Choices withPilotJets(List<Choice<JetBore>> others) {
    return new Choices(others, screws, cutaways, needleJets, needles, mainJets);
  }

  /**
   * These choices with other positions of the screw.
   *
   * @param others the turns
   * @return the changed choices
   * @throws IllegalArgumentException if there is none or one twice
   */
  public Choices withScrews(List<ScrewTurns> others) {
    return new Choices(pilotJets, others, cutaways, needleJets, needles, mainJets);
  }

  /**
   * These choices with other slides.
   *
   * @param others the slides, by their cutaway
   * @return the changed choices
   * @throws IllegalArgumentException if there is none or one twice
   */
  public Choices withCutaways(List<Choice<Cutaway>> others) {
    return new Choices(pilotJets, screws, others, needleJets, needles, mainJets);
  }

  /**
   * These choices with other needle jets.
   *
   * @param others the needle jets
   * @return the changed choices
   * @throws IllegalArgumentException if there is none or one twice
   */
  public Choices withNeedleJets(List<Choice<NeedleJet>> others) {
    return new Choices(pilotJets, screws, cutaways, others, needles, mainJets);
  }

  /**
   * These choices with other needles.
   *
   * @param others the needles with the grooves that are allowed
   * @return the changed choices
   * @throws IllegalArgumentException if there is none or one twice
   */
  public Choices withNeedles(List<Choice<NeedlePosition>> others) {
    return new Choices(pilotJets, screws, cutaways, needleJets, others, mainJets);
  }

  /**
   * These choices with other main jets.
   *
   * @param others the main jets
   * @return the changed choices
   * @throws IllegalArgumentException if there is none or one twice
   */
  public Choices withMainJets(List<Choice<JetBore>> others) {
    return new Choices(pilotJets, screws, cutaways, needleJets, needles, others);
  }

  /**
   * How many combinations there are, those that cannot be put together included.
   *
   * @return the product of the numbers of choices, a needle counting once for each of its grooves
   * @throws ArithmeticException if it is beyond 2⁶³ − 1
   */
  public long combinations() {
    long hung = needles.stream().mapToLong(choice -> choice.part().clips().size()).sum();
    long product = hung;
    for (List<?> list : List.of(pilotJets, screws, cutaways, needleJets, mainJets)) {
      product = StrictMath.multiplyExact(product, list.size());
    }
    return product;
  }

  private static <P> List<Choice<P>> checked(String what, List<Choice<P>> choices) {
    List<Choice<P>> copy = List.copyOf(choices);
    atLeastOne(what, copy);
    noneTwice(what, copy.stream().map(Choice::part).toList());
    return copy;
  }

  private static void atLeastOne(String what, List<?> list) {
    if (list.isEmpty()) {
      throw new IllegalArgumentException("choices without a " + what + ": allowed at least one");
    }
  }

  static void noneTwice(String what, List<?> parts) {
    Set<Object> seen = new HashSet<>();
    for (Object part : parts) {
      if (!seen.add(part)) {
        throw new IllegalArgumentException(what + " " + part + " twice: allowed once");
      }
    }
  }

  /** {@return a builder of a set of choices, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this set of choices set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.pilotJets = pilotJets;
    builder.screws = screws;
    builder.cutaways = cutaways;
    builder.needleJets = needleJets;
    builder.needles = needles;
    builder.mainJets = mainJets;
    return builder;
  }

  /** Names each component of a set of choices, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable List<Choice<JetBore>> pilotJets;
    private @Nullable List<ScrewTurns> screws;
    private @Nullable List<Choice<Cutaway>> cutaways;
    private @Nullable List<Choice<NeedleJet>> needleJets;
    private @Nullable List<Choice<NeedlePosition>> needles;
    private @Nullable List<Choice<JetBore>> mainJets;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value the pilot jets; at least one, none twice
     * @return this builder
     */
    public Builder pilotJets(List<Choice<JetBore>> value) {
      pilotJets = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value turns at which the screw of the pilot circuit may stand; at least one, none
     *     twice
     * @return this builder
     */
    public Builder screws(List<ScrewTurns> value) {
      screws = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the slides, by their cutaway; at least one, none twice
     * @return this builder
     */
    public Builder cutaways(List<Choice<Cutaway>> value) {
      cutaways = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the needle jets; at least one, none twice
     * @return this builder
     */
    public Builder needleJets(List<Choice<NeedleJet>> value) {
      needleJets = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the needles with the grooves that are allowed; at least one, none twice
     * @return this builder
     */
    public Builder needles(List<Choice<NeedlePosition>> value) {
      needles = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the main jets; at least one, none twice
     * @return this builder
     */
    public Builder mainJets(List<Choice<JetBore>> value) {
      mainJets = value;
      return this;
    }

    /**
     * Builds the set of choices.
     *
     * @return the set of choices
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Choices build() {
      return new Choices(
          Checks.present("set of choices", "pilotJets", pilotJets),
          Checks.present("set of choices", "screws", screws),
          Checks.present("set of choices", "cutaways", cutaways),
          Checks.present("set of choices", "needleJets", needleJets),
          Checks.present("set of choices", "needles", needles),
          Checks.present("set of choices", "mainJets", mainJets));
    }
  }
}
