package dev.jetting.examples.shopcounter.bench;

import java.util.Optional;

/**
 * A control of the bench: a part with what is fitted and the next sizes that exist.
 *
 * @param key its name in an address
 * @param label what people call the part
 * @param now the size in the setting that is looked at
 * @param fitted the size that is on the machine
 * @param leaner the next size towards lean
 * @param richer the next size towards rich
 */
public record Control(
    String key,
    String label,
    String now,
    String fitted,
    Optional<Step> leaner,
    Optional<Step> richer) {

  /** {@return whether the size differs from the one on the machine} */
  public boolean changed() {
    return !now.equals(fitted);
  }

  /**
   * A step to another size.
   *
   * @param text the size
   * @param query the part of the address that asks for it
   */
  public record Step(String text, String query) {}
}
