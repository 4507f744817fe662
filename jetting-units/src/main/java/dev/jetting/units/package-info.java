/**
 * Immutable quantities, one type for each thing that is measured or set on a carburettor.
 *
 * <p>{@link dev.jetting.units.Quantity} says what all of them promise: how they are made, read from
 * text, printed, compared and refused. No parameter takes and no method returns {@code null}; a
 * {@code null} argument throws {@link NullPointerException} naming the parameter.
 *
 * <p>Nothing here depends on the default locale, the default time zone or the clock.
 */
@NullMarked
package dev.jetting.units;

import org.jspecify.annotations.NullMarked;
