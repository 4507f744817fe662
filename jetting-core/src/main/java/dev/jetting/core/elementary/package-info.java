/**
 * The elementary carburettor of the textbooks: a fixed venturi, one fuel jet, one depression. For
 * checking the building blocks against published answers and for teaching. Not for slide
 * carburettors, whose openings, needle and pilot are in {@code dev.jetting.core.mixture}.
 *
 * <pre>{@code
 * static AirFuelRatio uphill(ElementaryCarburettor carburettor, Air there) {
 *   return carburettor.inAir(there.density()).airFuelRatio(Pressure.ofHectopascals(30));
 * }
 * }</pre>
 *
 * <ul>
 *   <li>{@link AirDemand}: the mean flow of air that an engine of known filling draws
 *   <li>{@link CompressibleThroat}: air in the throat of a fixed venturi, with its change of
 *       density, up to the speed of sound
 *   <li>{@link ElementaryCarburettor}: the simple carburettor of the textbooks: air through a
 *       venturi and fuel through a jet under one and the same depression, both of constant density
 *   <li>{@link Passage}: a passage with a constant coefficient for a fluid that keeps its density:
 *       ṁ = C A √(2 ρ (Δp − ρ g h))
 * </ul>
 */
package dev.jetting.core.elementary;
