package dev.jetting.examples.shopcounter.web;

/**
 * How much one visitor may ask for.
 *
 * @param burst the most requests at once
 * @param perSecond how many requests a second are made good
 * @param bodyBytes the longest body of a request
 * @param kitBytes the longest file of kits
 * @param kits the most kits in one check
 * @param checks the most kit checks that run at once
 */
public record Limits(
    int burst, double perSecond, int bodyBytes, int kitBytes, int kits, int checks) {

  /** {@return limits for a counter with a few screens} */
  public static Limits ofACounter() {
    return new Limits(120, 20, 300_000, 2_000_000, 1000, 4);
  }
}
