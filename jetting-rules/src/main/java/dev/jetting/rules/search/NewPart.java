package dev.jetting.rules.search;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * A part that a setting needs and that is not owned. {@link
 * dev.jetting.rules.kit.CatalogueChoices#part(PartKind, dev.jetting.core.parts.Setting)} returns
 * the catalogue's part.
 *
 * @param kind what kind of part
 * @param what the part in trade style, such as "main 118"; a jet by its bore, also where the number
 *     on it is its flow
 * @param price what it costs; empty if unknown
 */
public record NewPart(PartKind kind, String what, Optional<BigDecimal> price) {

  /**
   * Checks for nulls.
   *
   * @param kind what kind of part
   * @param what the part in trade style
   * @param price what it costs; empty if unknown
   */
  public NewPart {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(price, "price");
  }
}
