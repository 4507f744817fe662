/**
 * Sentences for people as data, and the words of a language that they are printed in.
 *
 * <ul>
 *   <li>{@link dev.jetting.rules.text.Message}: a sentence, as a key and typed arguments
 *   <li>{@link dev.jetting.rules.text.Argument}: a value that a sentence shows
 *   <li>{@link dev.jetting.rules.text.Wording}: the words of one language, with those of a shop
 * </ul>
 */
@NullMarked
package dev.jetting.rules.text;

import org.jspecify.annotations.NullMarked;
