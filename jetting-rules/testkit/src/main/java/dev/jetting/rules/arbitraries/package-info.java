/**
 * jqwik arbitraries of setup sheets, parts and part changes, for tests of rules. In an artifact of
 * its own, so that no embedding program gets a test library.
 *
 * <pre>{@code
 * @Provide
 * Arbitrary<List<Trial>> trials() {
 *   return TrialArbitraries.trials(PlausibleArbitraries.sheets()).list().ofSize(3);
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link PlausibleArbitraries}: random sheets that a tuner would believe: invented engines of
 *       65 to 250 cm³ whose carburettor and jets suit them by size
 *   <li>{@link SheetArbitraries}: random valid setup sheets and their components
 *   <li>{@link TrialArbitraries}: random part changes, and random trials for a {@link
 *       dev.jetting.rules.laws.LawKit}
 * </ul>
 */
package dev.jetting.rules.arbitraries;
