package dev.jetting.core.flow;

/** The part of a round bore that a flat edge leaves open: a circular segment. */
public final class SlideGap {

  private SlideGap() {}

  /**
   * Area of the segment below a flat edge: R² acos((R−h)/R) − (R−h) √(2Rh − h²).
   *
   * @param bore diameter of the bore, m
   * @param height height of the edge above the bottom of the bore, m; held within the bore
   * @return open area, m²
   */
  public static double area(double bore, double height) {
    double radius = bore / 2;
    double h = Math.min(Math.max(height, 0), bore);
    double aboveEdge = radius - h;
    return radius * radius * StrictMath.acos(aboveEdge / radius)
        - aboveEdge * Math.sqrt(Math.max(0, h * (bore - h)));
  }
}
