package dev.jetting.examples.kitdesk;

import dev.jetting.rules.kit.Kit;
import java.util.function.Supplier;

/**
 * A line of a file of kits.
 *
 * @param line its number, from 1
 * @param input digest of what was read, the first line included where that names the columns
 * @param length how many characters it has
 * @param kit reads the kit; throws an IllegalArgumentException that says what is wrong
 */
record Numbered(long line, String input, int length, Supplier<Kit> kit) {}
