package dev.jetting.core.parts;

import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.util.Objects;

/**
 * How far the screw of the pilot circuit is out, and which kind of screw the advice was meant for.
 *
 * <p>On the engine side of the slide the screw meters mixture, out is richer; on the filter side it
 * meters air, out is leaner. The model uses the kind that the carburettor has. A setting that names
 * the other kind is a finding of the rulebook.
 *
 * @param kind the kind that this number of turns is meant for
 * @param turns turns out from gently seated
 */
public record Screw(ScrewKind kind, ScrewTurns turns) {

  /**
   * Checks for nulls.
   *
   * @param kind the kind that this number of turns is meant for
   * @param turns turns out from gently seated
   */
  public Screw {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(turns, "turns");
  }
}
