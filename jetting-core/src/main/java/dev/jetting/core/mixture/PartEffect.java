package dev.jetting.core.mixture;

/**
 * What a part does to the mixture at one operating point.
 *
 * @param part the part
 * @param richer change of ln λ by one customary step towards rich, zero or less
 * @param leaner change of ln λ by one customary step towards lean, zero or more
 * @param authority the part's share in what all parts can do here, 0 to 1; the shares sum to 1
 *     wherever a part can do anything
 */
public record PartEffect(MeteringPart part, double richer, double leaner, double authority) {}
