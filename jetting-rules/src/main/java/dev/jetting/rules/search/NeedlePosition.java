package dev.jetting.rules.search;

import dev.jetting.core.parts.Needle;
import dev.jetting.units.ClipPosition;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * A needle and the grooves in which its clip may sit.
 *
 * @param needle the needle
 * @param clips where the clip may sit, each a count on the needle's grooves; at least one, none
 *     twice
 */
public record NeedlePosition(Needle needle, List<ClipPosition> clips) {

  /**
   * Checks the grooves.
   *
   * @param needle the needle
   * @param clips where the clip may sit
   * @throws IllegalArgumentException if there is none, one stands there twice, or one counts other
   *     grooves than the needle has
   */
  public NeedlePosition {
    Objects.requireNonNull(needle, "needle");
    clips = List.copyOf(clips);
    Choices.noneTwice("clip position of needle " + needle.id(), clips);
    if (clips.isEmpty()) {
      throw new IllegalArgumentException(
          "clip positions of needle " + needle.id() + ": allowed at least one");
    }
    for (ClipPosition clip : clips) {
      if (clip.grooves() != needle.grooves()) {
        throw new IllegalArgumentException(
            "clip position "
                + clip
                + ": allowed a count on the "
                + needle.grooves()
                + " grooves of needle "
                + needle.id());
      }
    }
  }

  /**
   * A needle whose clip may sit in any groove.
   *
   * @param needle the needle
   * @return the needle with all its grooves from the top
   */
  public static NeedlePosition inAnyGroove(Needle needle) {
    return new NeedlePosition(
        needle,
        IntStream.rangeClosed(1, needle.grooves())
            .mapToObj(groove -> ClipPosition.fromTop(groove, needle.grooves()))
            .toList());
  }
}
