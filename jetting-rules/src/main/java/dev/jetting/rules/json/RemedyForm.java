package dev.jetting.rules.json;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A remedy, in JSON: one of its kinds, and its sentence.
 *
 * @param text the remedy in one or two sentences, made from the rest
 * @param textMessage the text of an advice by its key and typed arguments, where it has a key
 * @param aim where the mixture has to go, no part being chosen
 * @param change a change of one part
 */
record RemedyForm(
    String text,
    Optional<Message> textMessage,
    Optional<AimForm> aim,
    Optional<ChangeForm> change) {

  RemedyForm {
    if (Stream.of(aim, change).filter(Optional::isPresent).count() > 1) {
      throw InvalidValueException.worded(
          Sentence.of("error.two-remedies"),
          Sentence.of("error.one-of").with("names", "aim, change"));
    }
  }

  static RemedyForm of(Remedy remedy) {
    return new RemedyForm(
        remedy.text(),
        as(Remedy.Advice.class, remedy).map(Remedy.Advice::message).flatMap(MessageForm::keyed),
        as(Remedy.Aim.class, remedy).map(AimForm::of),
        as(Remedy.Change.class, remedy).map(ChangeForm::of));
  }

  private static <R extends Remedy> Optional<R> as(Class<R> kind, Remedy remedy) {
    return Optional.of(remedy).filter(kind::isInstance).map(kind::cast);
  }

  /** The sentence of an aim or a change is made anew: it is not what a program reads. */
  Remedy remedy() {
    return aim.<Remedy>map(AimForm::aim)
        .or(() -> change.map(ChangeForm::change))
        .orElseGet(() -> new Remedy.Advice(textMessage.orElseGet(() -> Message.plain(text))));
  }

  /**
   * An aim, in JSON.
   *
   * @param direction which way the mixture must go
   * @param throttle the opening where it matters most
   * @param change by how much λ must change there, as a share: -0.1 for a fall by 10 %
   * @param words what the rule adds; may be empty
   * @param wordsMessage the words by their key and typed arguments, where they have a key
   */
  record AimForm(
      Remedy.Direction direction,
      ThrottleOpening throttle,
      double change,
      String words,
      Optional<Message> wordsMessage) {

    static AimForm of(Remedy.Aim aim) {
      return new AimForm(
          aim.direction(),
          aim.throttle(),
          aim.change(),
          aim.words().text(),
          MessageForm.keyed(aim.words()));
    }

    Remedy.Aim aim() {
      return new Remedy.Aim(
          direction, throttle, change, wordsMessage.orElseGet(() -> Message.plain(words)));
    }
  }

  /**
   * A change of one part, in JSON.
   *
   * @param part the part; needle-diameter means the needle as a whole
   * @param direction which way it moves the mixture where it matters
   * @param from the part there is, in trade style
   * @param to the part to fit, or the position to set, in trade style
   * @param fromPart the part there is, as a typed value
   * @param toPart the part to fit, or the position to set, as a typed value
   * @param steps over how many sizes, grooves or quarter turns, 1 or more
   * @param toBuy whether the part is not at hand
   * @param effect what it does
   * @param enough whether the finding is gone after this change alone
   * @param setting the setting after the change; in a report it leaves out what is as in the sheet
   */
  record ChangeForm(
      MeteringPart part,
      Remedy.Direction direction,
      String from,
      String to,
      Optional<Argument> fromPart,
      Optional<Argument> toPart,
      int steps,
      boolean toBuy,
      Remedy.Effect effect,
      boolean enough,
      After setting) {

    static ChangeForm of(Remedy.Change c) {
      return new ChangeForm(
          c.part(),
          c.direction(),
          c.from().text(),
          c.to().text(),
          MessageForm.typed(c.from()),
          MessageForm.typed(c.to()),
          c.steps(),
          c.toBuy(),
          c.effect(),
          c.enough(),
          new After(c.setting()));
    }

    Remedy.Change change() {
      return new Remedy.Change(
          part,
          direction,
          fromPart.orElseGet(() -> Argument.name(from)),
          toPart.orElseGet(() -> Argument.name(to)),
          steps,
          toBuy ? Remedy.Source.TO_BUY : Remedy.Source.AT_HAND,
          effect,
          enough ? Remedy.Relief.WHOLE : Remedy.Relief.PARTIAL,
          setting.setting());
    }
  }
}
