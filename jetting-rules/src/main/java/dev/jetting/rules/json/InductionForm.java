package dev.jetting.rules.json;

import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.Optional;

/**
 * An inlet in JSON. A sheet written before mixture model 4 states an open share and a blowback in
 * place of a kind: it is read as an inlet of unknown kind.
 *
 * @param id plain name
 * @param kind what opens the inlet; unknown where it is left out
 * @param opens degrees before top dead centre at which a piston port or rotary valve opens
 * @param closes degrees after top dead centre at which a rotary valve shuts; a piston port shuts as
 *     late as it opens early
 * @param openShare read and not used, in sheets of before mixture model 4
 * @param blowback read and not used, in sheets of before mixture model 4
 */
record InductionForm(
    String id,
    Optional<InductionKind> kind,
    Optional<Coefficient> opens,
    Optional<Coefficient> closes,
    Optional<Coefficient> openShare,
    Optional<Coefficient> blowback) {

  InductionForm {
    InductionKind stated = kind.orElse(InductionKind.UNKNOWN);
    boolean rotary = stated == InductionKind.ROTARY_VALVE;
    boolean port = stated == InductionKind.PISTON_PORT;
    if (opens.isPresent() != (port || rotary) || (rotary && closes.isEmpty())) {
      throw InvalidValueException.worded(
          Sentence.of("error.induction").with("id", id).with("kind", stated),
          Sentence.of("error.induction-fields"));
    }
    if (closes.isPresent() && !port && !rotary) {
      throw InvalidValueException.worded(
          Sentence.of("error.induction.closes").with("id", id).with("kind", stated),
          Sentence.of("error.none"));
    }
  }

  static InductionForm of(Induction induction) {
    boolean rotary = induction.kind() == InductionKind.ROTARY_VALVE;
    boolean port = induction.kind() == InductionKind.PISTON_PORT;
    return new InductionForm(
        induction.id(),
        Optional.of(induction.kind()),
        Optional.of(induction.opens()).filter(angle -> rotary || port),
        Optional.of(induction.closes()).filter(angle -> rotary),
        Optional.empty(),
        Optional.empty());
  }

  Induction induction() {
    return switch (kind.orElse(InductionKind.UNKNOWN)) {
      case PISTON_PORT ->
          Induction.builder()
              .id(id)
              .kind(InductionKind.PISTON_PORT)
              .opens(opens.orElseThrow())
              .closes(closes.orElse(opens.get()))
              .build();
      case ROTARY_VALVE ->
          Induction.rotaryValve(id).opens(opens.orElseThrow()).closes(closes.orElseThrow()).build();
      case REED_VALVE -> Induction.reedValve(id);
      case UNKNOWN -> Induction.unknown(id);
    };
  }
}
