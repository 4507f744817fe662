package dev.jetting.rules.search;

/**
 * One part of each kind, as indices into the lists of the {@link Choices} that were searched, and
 * of no others. In choices made of these, such as by {@link Choices#keeping}, the same index is
 * another part.
 *
 * @param pilotJet index of the pilot jet
 * @param screw index of the turns of the screw
 * @param cutaway index of the slide
 * @param needleJet index of the needle jet
 * @param needle index of the needle
 * @param clip index of the clip position in the needle's own list
 * @param mainJet index of the main jet
 */
public record ChoiceIndices(
    int pilotJet, int screw, int cutaway, int needleJet, int needle, int clip, int mainJet) {}
