package dev.jetting.rules;

import static java.util.stream.Collectors.joining;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.ProfileDifference;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What two assessed settings differ in: the parts, and the mixture over the throttle in the air of
 * the day.
 *
 * <p>What differs beside the setting of the carburettor, such as the weather, shows in the mixture
 * only. No judgement: {@link ReportDifference} compares what a rulebook says of both.
 *
 * <pre>{@code
 * SettingDifference difference = SettingDifference.from(before).to(after);
 * System.out.println(difference);
 * }</pre>
 *
 * @param parts the parts that differ, in the order of {@link Part}
 * @param mixture the mixture opening by opening, in the air of the day
 * @param worstBefore where the lean risk was greatest, over all days, openings and ridden speeds
 * @param worstAfter the same after the change
 */
public record SettingDifference(
    List<PartChange> parts,
    ProfileDifference mixture,
    WorstSpot worstBefore,
    WorstSpot worstAfter) {

  /** What a setting is made of. */
  public enum Part {
    /** The carburettor without its jets, needle and slide. */
    CARBURETTOR,
    /** What stands before the carburettor. */
    INTAKE,
    /** The main jet. */
    MAIN_JET,
    /** The pilot jet. */
    PILOT_JET,
    /** The screw of the pilot circuit. */
    SCREW,
    /** The slide, by its cutaway. */
    SLIDE,
    /** How high the slide stands on its stop. */
    IDLE_LIFT,
    /** The needle jet. */
    NEEDLE_JET,
    /** The needle. */
    NEEDLE,
    /** The groove of the needle's clip. */
    CLIP,
    /** How the floats are set. */
    FLOATS;

    private boolean differs(Setting one, Setting other) {
      return !of(one).equals(of(other));
    }

    private PartChange change(Setting before, Setting after) {
      return new PartChange(this, words(before), words(after));
    }

    private Object of(Setting s) {
      return switch (this) {
        case CARBURETTOR -> s.carburettor();
        case INTAKE -> s.intake();
        case MAIN_JET -> s.mainJet();
        case PILOT_JET -> s.pilotJet();
        case SCREW -> s.screw();
        case SLIDE -> s.cutaway();
        case IDLE_LIFT -> s.idleLift();
        case NEEDLE_JET -> s.needleJet();
        case NEEDLE -> s.needle();
        case CLIP -> s.clip();
        case FLOATS -> s.floats();
      };
    }

    private Argument words(Setting s) {
      return switch (this) {
        case CARBURETTOR -> Argument.name(s.carburettor().id());
        case INTAKE -> Argument.name(s.intake().id());
        case MAIN_JET -> Argument.mainJet(s.mainJet());
        case PILOT_JET -> Argument.pilotJet(s.pilotJet());
        case SCREW -> Argument.screw(s.screw().kind(), s.screw().turns());
        case SLIDE -> Argument.cutaway(s.cutaway());
        case IDLE_LIFT -> idleLift(s);
        case NEEDLE_JET -> Argument.needleJet(s.needleJet().bore());
        case NEEDLE -> Argument.needle(s.needle().id());
        case CLIP -> Argument.clip(s.clip());
        case FLOATS -> floats(s);
      };
    }
  }

  /**
   * A part that differs.
   *
   * @param part the part
   * @param before what it was, as a typed value
   * @param after what it is
   */
  public record PartChange(Part part, Argument before, Argument after) {

    /**
     * Checks for nulls.
     *
     * @param part the part
     * @param before what it was, as a typed value
     * @param after what it is
     */
    public PartChange {
      Objects.requireNonNull(part, "part");
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
    }

    /** {@return what is in place of what, for any language} */
    public Message message() {
      boolean alike = before.text().equals(after.text());
      Message message =
          Message.of(alike ? "setting-difference.part.alike" : "setting-difference.part")
              .with("after", after);
      return alike ? message : message.with("before", before);
    }
  }

  /** The first half of a comparison. */
  public static final class Before {
    private final AssessedSetting before;

    private Before(AssessedSetting before) {
      this.before = Objects.requireNonNull(before, "before");
    }

    /**
     * Compares the setting before with that after a change.
     *
     * @param after the setting after
     * @return what they differ in
     * @throws IllegalArgumentException if it was assessed at other throttle openings
     */
    public SettingDifference to(AssessedSetting after) {
      List<PartChange> parts = new ArrayList<>();
      for (Part part : Part.values()) {
        if (part.differs(before.setting(), after.setting())) {
          parts.add(part.change(before.setting(), after.setting()));
        }
      }
      return new SettingDifference(
          parts,
          ProfileDifference.from(before.profile()).to(after.profile()),
          before.worst(),
          after.worst());
    }
  }

  /**
   * Copies the parts.
   *
   * @param parts the parts that differ
   * @param mixture the mixture opening by opening, in the air of the day
   * @param worstBefore where the lean risk was greatest
   * @param worstAfter the same after the change
   */
  public SettingDifference {
    parts = List.copyOf(parts);
    Objects.requireNonNull(mixture, "mixture");
    Objects.requireNonNull(worstBefore, "worstBefore");
    Objects.requireNonNull(worstAfter, "worstAfter");
  }

  /**
   * Begins a comparison.
   *
   * @param before the setting before a change
   * @return the first half; {@link Before#to} completes it
   */
  public static Before from(AssessedSetting before) {
    return new Before(before);
  }

  /** {@return what differs, one sentence each, for any language} */
  public List<Message> messages() {
    List<Message> messages = new ArrayList<>();
    parts.forEach(part -> messages.add(part.message()));
    if (parts.isEmpty()) {
      messages.add(Message.of("setting-difference.same-parts"));
    }
    mixture.mostRicher().ifPresent(row -> messages.add(most("setting-difference.richer", row)));
    mixture.mostLeaner().ifPresent(row -> messages.add(most("setting-difference.leaner", row)));
    messages.add(
        Message.of("setting-difference.risk")
            .with("risk", RemedyWords.fromTo(worstBefore.leanRisk(), worstAfter.leanRisk())));
    return List.copyOf(messages);
  }

  /**
   * Returns the difference in the words of a language.
   *
   * @param wording the words
   * @return a line for each part that differs, then what that does to the mixture
   */
  public String text(Wording wording) {
    return messages().stream().map(wording::text).collect(joining("\n"));
  }

  /** {@return the text in English} */
  @Override
  public String toString() {
    return text(Wording.english());
  }

  /**
   * Returns the mixture opening by opening as comma-separated values.
   *
   * @return the text, as of {@link ProfileDifference#csv()}
   */
  public String csv() {
    return mixture.csv();
  }

  private static Message most(String key, ProfileDifference.Row row) {
    double share = Math.abs(StrictMath.expm1(row.lnLambdaChange()));
    return Message.of(key)
        .with("by", Argument.change(share))
        .with("throttle", Argument.throttle(row.throttle()));
  }

  private static Argument idleLift(Setting setting) {
    return Argument.words(
        Message.of("setting-difference.idle-lift")
            .with("size", Argument.exact(setting.idleLift().millimetres(), "mm")));
  }

  private static Argument floats(Setting setting) {
    return Argument.words(
        setting
            .floats()
            .map(
                floats ->
                    Message.of("setting-difference.floats")
                        .with("set", Argument.exact(floats.set().millimetres(), "mm"))
                        .with("nominal", Argument.exact(floats.nominal().millimetres(), "mm")))
            .orElseGet(() -> Message.of("setting-difference.floats.unknown")));
  }
}
