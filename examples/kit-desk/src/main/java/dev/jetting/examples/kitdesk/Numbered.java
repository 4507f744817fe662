package dev.jetting.examples.kitdesk;

import dev.jetting.rules.kit.Kit;
import java.util.function.Supplier;

/**
 * A line of a file of kits.
 *
 * @param line its number, from 1
 * @param kit reads the kit; throws an IllegalArgumentException that says what is wrong
 */
record Numbered(long line, Supplier<Kit> kit) {}
