package dev.jetting.core.calibration;

/**
 * The covariance of two values of a Gaussian process: symmetric and positive semi-definite.
 *
 * @param <X> what the process is a function of
 */
@FunctionalInterface
interface Kernel<X> {

  /**
   * The covariance of the values at two inputs.
   *
   * @param a one input
   * @param b another
   * @return their covariance
   */
  double covariance(X a, X b);

  /**
   * The squared-exponential kernel: σ² exp(−(a−b)²/(2ℓ²)) (Rasmussen and Williams, Gaussian
   * Processes for Machine Learning, 2006, eq. 2.16).
   *
   * @param deviation σ, standard deviation of a value, zero or more
   * @param length ℓ, how far apart two inputs are whose values differ, more than zero
   * @return the kernel over numbers
   * @throws IllegalArgumentException if a number is out of range
   */
  static Kernel<Double> squaredExponential(double deviation, double length) {
    if (!(deviation >= 0 && length > 0)) {
      throw new IllegalArgumentException(
          "squared-exponential kernel with a deviation of "
              + deviation
              + " and a length of "
              + length
              + ": allowed a deviation of 0 or more and a length above 0");
    }
    return (a, b) -> {
      double distance = (a - b) / length;
      return deviation * deviation * StrictMath.exp(-distance * distance / 2);
    };
  }
}
