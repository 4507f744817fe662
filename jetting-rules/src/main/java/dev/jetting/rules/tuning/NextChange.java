package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.Objects;

/**
 * One part to change, out of those at hand, and what that does.
 *
 * @param part what is changed
 * @param what the new part, in trade style
 * @param setting the setting after the change
 * @param before the lean risk over the throttle range as it is, today
 * @param after the same after the change, as predicted
 * @param reason what it is for
 */
public record NextChange(
    MeteringPart part,
    String what,
    Setting setting,
    RiskProfile before,
    RiskProfile after,
    Reason reason) {

  /** What a change is for. */
  public enum Reason {
    /** A sign asked for it, at the opening where it was. */
    SIGN,
    /** It brings the lean risk to what is accepted. */
    SAFE,
    /** It takes most off the lean risk; more changes must follow. */
    SAFER,
    /** It settles a danger that a rule finds. */
    RULE,
    /** A fault that was looked for and not found may be there: richer is safe either way. */
    SUSPICION,
    /** It makes the mixture as rich in other air, or with another fuel, as it was before. */
    AS_RICH,
    /** It comes nearer to what the engine needs, and the risk stays accepted on all days. */
    NEARER;

    /** {@return the reason, a sentence for the rider} */
    public String text() {
      return message().text();
    }

    /** {@return the same for any language} */
    public Message message() {
      return Words.of("reason", this);
    }
  }

  /**
   * Checks for nulls.
   *
   * @param part what is changed
   * @param what the new part, in trade style
   * @param setting the setting after the change
   * @param before the lean risk over the throttle range as it is
   * @param after the same after the change, as predicted
   * @param reason what it is for
   */
  public NextChange {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(reason, "reason");
  }

  /** {@return the new part, or the new position, for any language} */
  public Argument to() {
    return switch (part) {
      case MAIN_JET -> Argument.mainJet(setting.mainJet());
      case PILOT_JET -> Argument.pilotJet(setting.pilotJet());
      case CUTAWAY -> Argument.cutaway(setting.cutaway());
      case NEEDLE_JET -> Argument.needleJet(setting.needleJet().bore());
      case NEEDLE_DIAMETER, NEEDLE_TAPER -> Argument.needle(setting.needle().id());
      case CLIP -> Argument.clip(setting.clip());
      case SCREW -> Argument.screw(setting.screw().kind(), setting.screw().turns());
    };
  }
}
