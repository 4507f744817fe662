/** Measures the library; every figure beside its baseline, in one run. */
@org.jspecify.annotations.NullMarked
package dev.jetting.examples.benchmarks;
