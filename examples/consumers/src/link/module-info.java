/** The descriptor that Hipparchus lacks, with the packages that jetting uses. */
module hipparchus.core {
  exports org.hipparchus.analysis;
  exports org.hipparchus.analysis.solvers;
  exports org.hipparchus.distribution.continuous;
  exports org.hipparchus.linear;
  exports org.hipparchus.random;
  exports org.hipparchus.special;
}
