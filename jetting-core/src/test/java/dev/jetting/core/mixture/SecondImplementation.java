package dev.jetting.core.mixture;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The equations of MODEL.md written a second time, without a class of {@code core.flow}: every
 * implicit equation is solved by bisection down to neighbouring numbers, flows through restrictions
 * included. It shares with the model only the properties of air and fuel.
 */
final class SecondImplementation {

  double drop;
  double charge;
  double air;
  double suction;
  double well;
  double main;
  double pilot;
  double lambda;

  SecondImplementation(Setup setup, double theta, double rpm) {
    Setting s = setup.setting();
    Engine e = setup.engine();
    FlowCoefficients c = s.carburettor().flow();
    double p0 = setup.air().pressure().pascals();
    double rho = setup.air().density().kilogramsPerCubicMetre();
    double fuelRho = setup.fuel().density(setup.fuelTemperature()).kilogramsPerCubicMetre();
    double mu = setup.fuel().dynamicViscosity(setup.fuelTemperature()).pascalSeconds();

    double bore = s.carburettor().bore().millimetres();
    double idle = s.idleLift().millimetres();
    double lift = idle + theta * (bore - idle);
    double u = lift / bore;
    double upstream = c.upstreamGap().value() * segment(bore, lift + s.cutaway().millimetres());
    double downstream = c.downstreamGap().value() * segment(bore, lift);
    double iu = 1 / (upstream * upstream);
    double id = 1 / (downstream * downstream);
    double filter =
        s.intake().effectiveArea().map(a -> Math.pow(a.squareMillimetres(), -2)).orElse(0.0);
    double sum = iu + id + filter;

    double eta = at(e.deliveryRatio(), rpm) * at(e.exhaust().deliveryFactor(), rpm);
    double turns = rpm / 60;
    double swept = e.displacement().cubicCentimetres() * 1e-6;
    double area = 1e-6 / Math.sqrt(sum);
    // √(R T0) is √(p0/ρ).
    double root = Math.sqrt(p0 / rho);
    double port = 7.295 * e.loadLine().peak().rpm() / rpm * root / Math.sqrt(287.05287 * 288.15);
    double[] wave = SecondPulsation.of(e.induction(), area * root / (swept * turns), port, eta);
    double phi = wave[0];
    drop = wave[1];
    air = area * p0 / root * phi * psi(drop) * wave[2];
    charge = air / (rho * swept * turns * eta);

    double kappa0 = c.nozzleClosed().value();
    double kappa =
        (kappa0 + (c.nozzleOpen().value() - kappa0) * Math.pow(u, c.nozzleExponent().value()))
            * Math.max(
                0,
                1
                    - c.neckEffect().value()
                        * (s.needleJet().neck().millimetres() / bore)
                        * Math.pow(1 - u, 2));
    suction = p0 * drop * (filter + kappa * iu) / sum;

    double jet = s.needleJet().bore().millimetres() * 1e-3;
    double needle = needle(s, lift) * 1e-3;
    double ring = Math.PI / 4 * (jet * jet - needle * needle);
    double gap = (jet - needle) / 2;
    double ecc = c.needleEccentricity().value();
    double jetLength = s.carburettor().needleJetLength().millimetres() * 1e-3;
    double ringLoss = c.needleEntryLoss().value() * fuelRho / (2 * ring * ring);
    double ringFriction = 12 * mu * jetLength / (gap * gap * (1 + 1.5 * ecc * ecc) * ring);
    double mainBore = s.mainJet().millimetres() * 1e-3;
    double mainLength = c.mainJetLength().value();
    DoubleUnaryOperator resists =
        q -> ringLoss * q * q + ringFriction * q + jetDrop(q, mainBore, mainLength, fuelRho, mu);
    double headPressure = fuelRho * 9.80665 * overFuel(s, s.carburettor().needleJetHead());
    double mean = phi * suction - headPressure;
    double quick = phi * volumeFlow(resists, suction - headPressure);
    double slow = volumeFlow(resists, mean);
    // Of the restriction α Q² + β Q: its slope at no flow is β, at the settled flow √(β² + 4αΔ).
    double friction = ringFriction + jetDropSlope(0, mainBore, mainLength, fuelRho, mu);
    double steep =
        ringFriction + 2 * ringLoss * slow + jetDropSlope(slow, mainBore, mainLength, fuelRho, mu);
    double disc = Math.PI / 4 * bore * bore * 1e-6;
    double usualNeedle = 0.0845 - 0.0235 * u;
    double column =
        mainLength * 0.041 * bore * 1e-3 / (0.041 * 0.041 * disc)
            + 0.025 / (0.089 * 0.089 * disc)
            + jetLength / ((0.089 * 0.089 - usualNeedle * usualNeedle) * disc);
    double settles = turns * fuelRho * column / (steep + 2.2 * friction);
    double weight = 7 * settles + 46 * settles * settles;
    double settled = weight / (1 + weight);
    double way = slow >= quick ? 0 : (quick - slow) / (quick - slow + 0.05 * slow);
    double slowWeight = mean <= 0 ? 0.9 : (1 - way) * settled + way * 0.9;
    main = fuelRho * (quick == 0 ? 0 : (1 - slowWeight) * quick + slowWeight * slow);

    PilotCircuit pc = s.carburettor().pilot();
    double turned = s.screw().turns().turns() * pc.areaPerTurn().squareMillimetres() * 1e-6;
    double fixed = pc.fixedArea().squareMillimetres() * 1e-6;
    boolean air = pc.screwKind() == ScrewKind.AIR;
    double t =
        (lift - idle - pc.uncoversFrom().millimetres())
            / (pc.uncoversTo().millimetres() - pc.uncoversFrom().millimetres());
    double step = t <= 0 ? 0 : t >= 1 ? 1 : 3 * t * t - 2 * t * t * t;
    double hole = pc.progressionHole().squareMillimetres() * 1e-6 * step;
    double outlet = c.pilotOutlet().value() * ((air ? fixed : turned) + hole);
    double bleed = c.pilotBleed().value() * (air ? turned : fixed);
    double pilotBore = s.pilotJet().millimetres() * 1e-3;
    double pilotLength = c.pilotJetLength().value();
    DoubleUnaryOperator fuel =
        w ->
            fuelRho
                * volumeFlow(
                    q -> jetDrop(q, pilotBore, pilotLength, fuelRho, mu),
                    w - fuelRho * 9.80665 * overFuel(s, pc.head()));
    double behind = p0 * wave[4];
    well =
        bisect(
            w -> {
              double liquid = fuel.applyAsDouble(w);
              double gas = bleed * Math.sqrt(2 * rho * w);
              return (liquid + gas) * (liquid / fuelRho + gas / rho)
                  - outlet * outlet * 2 * expanded(p0, p0 - w, p0 - behind);
            },
            0,
            behind);
    pilot = wave[3] * fuel.applyAsDouble(well);

    double burning = (main + pilot) * (1 - setup.fuel().oilMassFraction());
    double dry = this.air * setup.air().dryAirMassFraction();
    lambda = Math.min(100, dry / (burning * setup.fuel().stoichiometricRatio().value()));
  }

  /** The linearised short orifice: Δp = (a V² + b μ V/(ρ d)) ρ/2. */
  private static double jetDrop(double q, double d, double lengthRatio, double rho, double mu) {
    double cdu = 0.827 - 0.0085 * lengthRatio;
    double velocity = q / (Math.PI / 4 * d * d);
    double b = 40 * (1 + 2.25 * lengthRatio) / cdu;
    return rho / 2 * velocity * velocity / (cdu * cdu) + b * mu * velocity / (2 * d);
  }

  private static double jetDropSlope(
      double q, double d, double lengthRatio, double rho, double mu) {
    double cdu = 0.827 - 0.0085 * lengthRatio;
    double disc = Math.PI / 4 * d * d;
    double b = 40 * (1 + 2.25 * lengthRatio) / cdu;
    return rho * q / (disc * disc) / (cdu * cdu) + b * mu / (2 * d * disc);
  }

  /** Of a gas that keeps its temperature, from a pressure down to another or to its choking. */
  private static double expanded(double ambient, double from, double to) {
    double end = Math.max(to, from * Math.exp(-0.5));
    return end * end / ambient * -Math.log1p(-(from - end) / from);
  }

  /** Flow at which a rising drop comes to what is there to drive it. */
  private static double volumeFlow(DoubleUnaryOperator dropAt, double driving) {
    return driving <= 0 ? 0 : bisect(q -> dropAt.applyAsDouble(q) - driving, 0, 1);
  }

  /** Circular segment in mm² by its angle at the centre: R²(t − sin t)/2. */
  private static double segment(double bore, double height) {
    double t = 4 * Math.asin(Math.sqrt(Math.min(1, height / bore)));
    return bore * bore / 8 * (t - Math.sin(t));
  }

  private static double psi(double drop) {
    double lnRatio = Math.log1p(-Math.min(drop, 1 - Math.pow(2 / 2.4, 3.5)));
    return Math.sqrt(7 * Math.exp(2 / 1.4 * lnRatio) * -Math.expm1(0.4 / 1.4 * lnRatio));
  }

  private static double overFuel(Setting s, Length nominal) {
    if (s.floats().isEmpty()) {
      return nominal.millimetres() / 1000;
    }
    double set = s.floats().orElseThrow().set().millimetres();
    double meant = s.floats().orElseThrow().nominal().millimetres();
    return Math.max(0, (nominal.millimetres() - meant + set) / 1000);
  }

  private static double needle(Setting s, double lift) {
    double down = lift + (s.clip().grooveFromTop() - 1) * s.needle().groovePitch().millimetres();
    if (down > s.needle().tip().millimetres()) {
      return 0;
    }
    double lost = 0;
    List<Taper> tapers = s.needle().tapers();
    for (int i = 0; i < tapers.size(); i++) {
      // Each taper's own rate from its start, the rate before it taken off.
      double before = i == 0 ? 0 : tapers.get(i - 1).rate();
      lost +=
          (tapers.get(i).rate() - before) * Math.max(0, down - tapers.get(i).start().millimetres());
    }
    return s.needle().cylinder().millimetres() - lost;
  }

  private static double at(RpmCurve curve, double rpm) {
    List<RpmCurve.Point> points = curve.points();
    int last = points.size() - 1;
    if (rpm >= points.get(last).speed().rpm()) {
      return points.get(last).value();
    }
    for (int i = last; i > 0; i--) {
      double low = points.get(i - 1).speed().rpm();
      double high = points.get(i).speed().rpm();
      if (rpm >= low) {
        return ((high - rpm) * points.get(i - 1).value() + (rpm - low) * points.get(i).value())
            / (high - low);
      }
    }
    return points.get(0).value();
  }

  /** Root of a rising function, between neighbouring numbers. */
  private static double bisect(DoubleUnaryOperator rising, double from, double to) {
    double low = from;
    double high = to;
    for (double mid = (low + high) / 2; low < mid && mid < high; mid = (low + high) / 2) {
      if (rising.applyAsDouble(mid) < 0) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return high;
  }
}
