package dev.jetting.rules;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import java.util.List;

/**
 * The parts that the rider owns or can buy for this carburettor. An empty list means that nobody
 * told, not that there are none.
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
   */
  public PartsAtHand {
    pilotJets = List.copyOf(pilotJets);
    cutaways = List.copyOf(cutaways);
    needleJets = List.copyOf(needleJets);
    needles = List.copyOf(needles);
    mainJets = List.copyOf(mainJets);
  }

  /** {@return no list told} */
  public static PartsAtHand unknown() {
    return UNKNOWN;
  }
}
