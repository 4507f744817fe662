/**
 * Sentences for people as data, and the words of a language that they are printed in.
 *
 * <pre>{@code
 * static String inItalian(ThrottleOpening opening) {
 *   Message message =
 *       Message.of("shop.look", "Look at the plug at {throttle}.")
 *           .with("throttle", Argument.throttle(opening));
 *   return Wording.of(Locale.ITALIAN)
 *       .with(Map.of("shop.look", "Guardare la candela a {throttle}."))
 *       .text(message);
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link Argument}: a value that a {@link Message} shows: a number with its kind, a name, or
 *       words of their own
 *   <li>{@link Message}: a sentence for people, as data: a key, typed arguments, and its words in
 *       English or in the language of its author
 *   <li>{@link Wording}: the words of one language: the library's own, with those that a shop adds
 *       or replaces
 * </ul>
 */
@NullMarked
package dev.jetting.rules.text;

import org.jspecify.annotations.NullMarked;
