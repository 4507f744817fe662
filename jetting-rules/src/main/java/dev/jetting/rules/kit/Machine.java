package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.parts.Intake;
import java.util.Objects;

/**
 * A kind of machine that kits are sold for: an engine with its exhaust and load line, and what
 * stands before its carburettor.
 *
 * @param id its name, unique among the machines of the catalogue
 * @param engine the engine, exhaust included
 * @param intake what stands before the carburettor
 */
public record Machine(String id, Engine engine, Intake intake) {

  /**
   * Checks the id.
   *
   * @param id its name, unique among the machines of the catalogue
   * @param engine the engine, exhaust included
   * @param intake what stands before the carburettor
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters
   */
  public Machine {
    Checks.id("machine", id);
    Objects.requireNonNull(engine, "engine");
    Objects.requireNonNull(intake, "intake");
  }
}
