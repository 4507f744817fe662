package dev.jetting.rules;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.Objects;

/**
 * The parts that the rider owns or can buy for this carburettor. An empty list means unknown, not
 * that there are none.
 *
 * @param pilotJets pilot jets
 * @param cutaways slides, by their cutaway
 * @param needleJets needle jets
 * @param needles needles
 * @param mainJets main jets
 */
public record PartsAtHand(
    List<JetBore> pilotJets,
    List<Cutaway> cutaways,
    List<NeedleJet> needleJets,
    List<Needle> needles,
    List<JetBore> mainJets) {

  /** The most parts of a kind: a plan looks at each of them. */
  public static final int MOST_PARTS = 500;

  private static final PartsAtHand UNKNOWN =
      new PartsAtHand(List.of(), List.of(), List.of(), List.of(), List.of());

  /**
   * Copies the lists.
   *
   * @param pilotJets pilot jets
   * @param cutaways slides, by their cutaway
   * @param needleJets needle jets
   * @param needles needles
   * @param mainJets main jets
   * @throws IllegalArgumentException if a list has more than 500 parts
   */
  public PartsAtHand {
    pilotJets = List.copyOf(pilotJets);
    cutaways = List.copyOf(cutaways);
    needleJets = List.copyOf(needleJets);
    needles = List.copyOf(needles);
    mainJets = List.copyOf(mainJets);
    checkSize("pilotJets", "pilot jets at hand", pilotJets);
    checkSize("cutaways", "slides at hand", cutaways);
    checkSize("needleJets", "needle jets at hand", needleJets);
    checkSize("needles", "needles at hand", needles);
    checkSize("mainJets", "main jets at hand", mainJets);
  }

  private static void checkSize(String field, String what, List<?> parts) {
    Checks.atMost(field, () -> Sentence.name(what), parts.size(), MOST_PARTS);
  }

  /** {@return parts at hand with every list unknown} */
  public static PartsAtHand unknown() {
    return UNKNOWN;
  }

  /** {@return a builder of a list of parts, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this list of parts set} */
  public Builder toBuilder() {
    return new Builder()
        .pilotJets(pilotJets)
        .cutaways(cutaways)
        .needleJets(needleJets)
        .needles(needles)
        .mainJets(mainJets);
  }

  /**
   * Returns this list of parts with another value of one component; all else stays.
   *
   * @param pilotJets pilot jets
   * @return the changed list of parts
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PartsAtHand withPilotJets(List<JetBore> pilotJets) {
    return toBuilder().pilotJets(Objects.requireNonNull(pilotJets, "pilotJets")).build();
  }

  /**
   * Returns this list of parts with another value of one component; all else stays.
   *
   * @param cutaways slides, by their cutaway
   * @return the changed list of parts
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PartsAtHand withCutaways(List<Cutaway> cutaways) {
    return toBuilder().cutaways(Objects.requireNonNull(cutaways, "cutaways")).build();
  }

  /**
   * Returns this list of parts with another value of one component; all else stays.
   *
   * @param needleJets needle jets
   * @return the changed list of parts
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PartsAtHand withNeedleJets(List<NeedleJet> needleJets) {
    return toBuilder().needleJets(Objects.requireNonNull(needleJets, "needleJets")).build();
  }

  /**
   * Returns this list of parts with another value of one component; all else stays.
   *
   * @param needles needles
   * @return the changed list of parts
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PartsAtHand withNeedles(List<Needle> needles) {
    return toBuilder().needles(Objects.requireNonNull(needles, "needles")).build();
  }

  /**
   * Returns this list of parts with another value of one component; all else stays.
   *
   * @param mainJets main jets
   * @return the changed list of parts
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PartsAtHand withMainJets(List<JetBore> mainJets) {
    return toBuilder().mainJets(Objects.requireNonNull(mainJets, "mainJets")).build();
  }

  /** Names each component of a list of parts, so that none takes the place of another. */
  public static final class Builder {
    private List<JetBore> pilotJets = List.of();
    private List<Cutaway> cutaways = List.of();
    private List<NeedleJet> needleJets = List.of();
    private List<Needle> needles = List.of();
    private List<JetBore> mainJets = List.of();

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value pilot jets; need not be set
     * @return this builder
     */
    public Builder pilotJets(List<JetBore> value) {
      pilotJets = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value slides, by their cutaway; need not be set
     * @return this builder
     */
    public Builder cutaways(List<Cutaway> value) {
      cutaways = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value needle jets; need not be set
     * @return this builder
     */
    public Builder needleJets(List<NeedleJet> value) {
      needleJets = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value needles; need not be set
     * @return this builder
     */
    public Builder needles(List<Needle> value) {
      needles = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value main jets; need not be set
     * @return this builder
     */
    public Builder mainJets(List<JetBore> value) {
      mainJets = value;
      return this;
    }

    /**
     * Builds the list of parts.
     *
     * @return the list of parts
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public PartsAtHand build() {
      return new PartsAtHand(pilotJets, cutaways, needleJets, needles, mainJets);
    }
  }
}
