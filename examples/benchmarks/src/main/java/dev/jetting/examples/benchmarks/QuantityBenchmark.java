package dev.jetting.examples.benchmarks;

import dev.jetting.units.JetBore;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A quantity beside a plain record that holds a double; a thousand of each. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class QuantityBenchmark {

  private static final int COUNT = 1000;

  private record Bore(double millimetres) implements Comparable<Bore> {
    @Override
    public int compareTo(Bore other) {
      return Double.compare(millimetres, other.millimetres);
    }
  }

  private final double[] millimetres = new double[COUNT];
  private final JetBore[] quantities = new JetBore[COUNT];
  private final Bore[] records = new Bore[COUNT];

  /** Jets of 0.50 mm and up. */
  public QuantityBenchmark() {
    for (int i = 0; i < COUNT; i++) {
      millimetres[i] = (500 + i) / 1000.0;
      quantities[i] = JetBore.ofMillimetres(millimetres[i]);
      records[i] = new Bore(millimetres[i]);
    }
  }

  /** Baseline of the creation. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public Object[] createRecord() {
    Object[] made = new Object[COUNT];
    for (int i = 0; i < COUNT; i++) {
      made[i] = new Bore(millimetres[i]);
    }
    return made;
  }

  /** Creation with its checks. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public Object[] createQuantity() {
    Object[] made = new Object[COUNT];
    for (int i = 0; i < COUNT; i++) {
      made[i] = JetBore.ofMillimetres(millimetres[i]);
    }
    return made;
  }

  /** Baseline of the sum. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public double sumRecord() {
    double sum = 0;
    for (Bore bore : records) {
      sum += bore.millimetres();
    }
    return sum;
  }

  /** The sum of what the accessor gives. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public double sumQuantity() {
    double sum = 0;
    for (JetBore bore : quantities) {
      sum += bore.millimetres();
    }
    return sum;
  }

  /** Baseline of the comparison. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public int compareRecord() {
    int less = 0;
    for (int i = 1; i < COUNT; i++) {
      less += records[i - 1].compareTo(records[i]);
    }
    return less;
  }

  /** The comparison of neighbours. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public int compareQuantity() {
    int less = 0;
    for (int i = 1; i < COUNT; i++) {
      less += quantities[i - 1].compareTo(quantities[i]);
    }
    return less;
  }
}
