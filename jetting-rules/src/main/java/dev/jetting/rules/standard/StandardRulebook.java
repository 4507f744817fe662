package dev.jetting.rules.standard;

import dev.jetting.rules.Rulebook;
import java.util.List;

/**
 * The rules that come with the library.
 *
 * <p>Their limits are the trade's common practice or this project's own assumption; {@link
 * Rulebook#assumptions()} lists them. Not a substitute for the engine builder's word or a plug
 * chop.
 *
 * @see RulePages a page on each rule, <a href="doc-files/index.md">here</a> in one list
 */
public final class StandardRulebook {

  private static final Rulebook RULEBOOK =
      Rulebook.of(
          "standard",
          "7",
          List.of(
              LeanAnywhere.RULE,
              LeanestMidRange.RULE,
              PilotOnOverrun.RULE,
              ScrewKindMismatch.RULE,
              JetNumbering.RULE,
              FloatValveFlow.RULE,
              FuelOverMouth.RULE,
              NeedleInNeedleJet.RULE,
              AirSwing.RULE,
              TooRich.RULE,
              CutawayBalance.RULE,
              MainJetAuthority.RULE,
              ScrewRange.RULE,
              ClipAtEnd.RULE,
              MixtureStep.RULE,
              CrispMiddle.RULE,
              LeanUphill.RULE,
              FloatHeight.RULE,
              ProvenRoom.RULE,
              EngineChange.RULE,
              EngineUnread.RULE,
              FuelChange.RULE,
              IntakeChange.RULE,
              AirChange.RULE,
              JetsMovedOver.RULE,
              CarburettorTooBig.RULE,
              CarburettorTooSmall.RULE,
              MainJetKit.RULE));

  private StandardRulebook() {}

  /** {@return the standard rulebook} */
  public static Rulebook rulebook() {
    return RULEBOOK;
  }
}
