package dev.jetting.rules.search;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * A part that a setting needs and that is not owned.
 *
 * @param kind what kind of part
 * @param what the part in trade style, such as "main 126"
 * @param price what it costs; empty where nobody told
 */
public record NewPart(PartKind kind, String what, Optional<BigDecimal> price) {

  /**
   * Checks for nulls.
   *
   * @param kind what kind of part
   * @param what the part in trade style
   * @param price what it costs; empty where nobody told
   */
  public NewPart {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(price, "price");
  }
}
