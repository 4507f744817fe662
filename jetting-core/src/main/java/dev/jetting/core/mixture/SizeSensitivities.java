package dev.jetting.core.mixture;

/**
 * How ln λ at an operating point answers to the sizes of the parts as made: ∂ ln λ/∂ size, 1/mm.
 *
 * <p>In closed form, from the equations of MODEL.md. For sizes that differ by hundredths of a
 * millimetre; {@link PartEffect} has the effect of a whole step. All 0 where λ is that of {@link
 * MixturePoint#LEANEST}.
 *
 * @param pilotJet to the bore of the pilot jet, zero or less
 * @param needleJet to the bore of the needle jet, zero or less
 * @param needle to the diameter of the needle where it stands in the needle jet, zero or more
 * @param mainJet to the bore of the main jet, zero or less
 */
public record SizeSensitivities(double pilotJet, double needleJet, double needle, double mainJet) {}
