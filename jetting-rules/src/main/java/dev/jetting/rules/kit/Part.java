package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * A part as a seller lists it.
 *
 * <p>Not for the piece on the bench: what was drilled, filed or bent is no longer the part of the
 * catalogue.
 *
 * @param id its name, unique in the catalogue; a needle's is the needle's own
 * @param description a line for people
 * @param series id of the series that it belongs to, which says what it fits
 * @param shape what the mixture model has to know of it
 * @param price what one costs, in the one currency of the catalogue: 0 to 1 000 000, of at most
 *     four decimals; empty if unknown
 */
public record Part(
    String id, String description, String series, PartShape shape, Optional<BigDecimal> price) {

  private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);
  private static final int DECIMALS = 4;

  /**
   * Checks the id and the price, which loses the zeros at its end.
   *
   * @param id its name, unique in the catalogue; a needle's is the needle's own
   * @param description a line for people
   * @param series id of the series that it belongs to, which says what it fits
   * @param shape what the mixture model has to know of it
   * @param price what one costs, in the one currency of the catalogue: 0 to 1 000 000, of at most
   *     four decimals; empty if unknown
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters, a needle has another id, or the price is out of range
   */
  public Part {
    Checks.id("part", id);
    Checks.lineOrNothing(
        "description", "description of part " + id, description, Catalogue.LONGEST_TITLE);
    Checks.id("series", "series of part " + id, series);
    Objects.requireNonNull(shape, "shape");
    if (shape instanceof PartShape.NeedleShape rod && !rod.needle().id().equals(id)) {
      throw new IllegalArgumentException(
          "id of needle " + rod.needle().id() + ": allowed that of the part, " + id);
    }
    String partId = id;
    price = price.map(amount -> checked(partId, amount));
  }

  private static BigDecimal checked(String id, BigDecimal price) {
    BigDecimal plain = price.stripTrailingZeros();
    if (plain.signum() < 0 || plain.compareTo(MOST) > 0 || plain.scale() > DECIMALS) {
      throw new IllegalArgumentException(
          "price of part " + id + " " + plain + ": allowed 0 to 1000000, at most 4 decimals");
    }
    return plain.setScale(Math.max(0, plain.scale()));
  }
}
