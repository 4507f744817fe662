package dev.jetting.core.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IsentropicFlowTest {

  private static final double GAMMA = IsentropicFlow.GAMMA_AIR;
  private static final double AMBIENT = 101_325;
  private static final double R_T = 287.05 * 288.15;

  @Test
  void criticalRatio_ofAir_isThePublished() {
    // Critical pressure ratio at γ 1.4: any textbook of gas dynamics, calculated.
    assertThat(IsentropicFlow.criticalRatio(GAMMA)).isCloseTo(0.5282818, within(5e-8));
  }

  @Test
  void chokedFlux_ofStandardAir_isThePublished() {
    // 241.240 kg/(m² s) at 101 325 Pa, 288.15 K, R 287.05 J/(kg K): calculated.
    double flux = AMBIENT / Math.sqrt(R_T) * IsentropicFlow.psi(0.3, GAMMA);

    assertThat(flux).isCloseTo(241.240, within(5e-4));
  }

  /** Expansibility of a nozzle in an endless pipe, γ 1.4: the Python library fluids 1.3.1. */
  @ParameterizedTest
  @CsvSource({
    "1000, 0.9946989",
    "2000, 0.9893694",
    "5000, 0.9732065",
    "10000, 0.9456603",
    "20000, 0.8880588",
    "40000, 0.7604690"
  })
  void psi_overTheIncompressibleFlow_isThatOfAGeneralPurposeLibrary(double drop, double expected) {
    double compressible = AMBIENT / Math.sqrt(R_T) * IsentropicFlow.psi(1 - drop / AMBIENT, GAMMA);
    double incompressible = Math.sqrt(2 * AMBIENT / R_T * drop);

    assertThat(compressible / incompressible).isCloseTo(expected, within(1e-7));
  }

  /**
   * Isentropic flux of real air in kg/(m² s) from 101 325 Pa and 288.15 K, by enthalpies and
   * entropies of CoolProp 8.0.0; the last line is the greatest. The ideal gas is within a
   * thousandth.
   */
  @ParameterizedTest
  @CsvSource({
    "1000, 49.2462",
    "2000, 69.2719",
    "5000, 107.7412",
    "10000, 148.0613",
    "20000, 196.6506",
    "40000, 238.1943",
    "60000, 241.3922"
  })
  void flux_isNearlyThatOfRealAir(double drop, double expected) {
    double flux = AMBIENT / Math.sqrt(R_T) * IsentropicFlow.psi(1 - drop / AMBIENT, GAMMA);

    assertThat(flux).isCloseTo(expected, within(1e-3 * expected));
  }

  @Test
  void psi_isConstantBelowTheCriticalRatio_andZeroAtOne() {
    double choked = IsentropicFlow.psi(IsentropicFlow.criticalRatio(GAMMA), GAMMA);

    assertThat(IsentropicFlow.psi(0, GAMMA)).isEqualTo(choked);
    assertThat(IsentropicFlow.psi(0.5, GAMMA)).isEqualTo(choked);
    assertThat(IsentropicFlow.psi(0.53, GAMMA)).isLessThan(choked);
    assertThat(IsentropicFlow.psi(1, GAMMA)).isZero();
  }

  @Test
  void psiOfDrop_keepsItsDigitsForAHairOfADrop() {
    // For a small drop Ψ tends to √(2 drop), the incompressible flow; next term −3/(4γ) drop.
    double drop = 1e-12;

    assertThat(IsentropicFlow.psiOfDrop(drop, GAMMA) / Math.sqrt(2 * drop))
        .isCloseTo(1, within(1e-11));
  }
}
