/**
 * Decimal notation of binary numbers, the same on every JDK. Shared with the library's own modules;
 * not part of the published API.
 */
@NullMarked
package dev.jetting.units.number;

import org.jspecify.annotations.NullMarked;
