package swashlight.drive.unit;

/**
 * Losses of a whole unit by six dimensionless numbers: the classical way to describe a bench test without looking inside.
 *
 * <pre>
 *   Q_loss = C_s d Δp/µ + x d ω Δp/B + C_st d^(2/3) √(2 Δp/ρ)
 *   T_loss = C_v d µ ω + C_f d Δp + ½ x C_h ρ ω² d^(5/3)
 *
 *   d = V/2π   displacement a radian                      m³
 *   C_s, C_st  laminar and turbulent slip                 1
 *   C_v, C_f, C_h  viscous, Coulomb, hydrodynamic drag    1
 *   x, Δp, ω   {@link RunningPoint};  µ, ρ, B  {@link WorkingFluid}
 * </pre>
 *
 * Holds inside the range it was fitted to. Source: Pourmovahed, Beachley and Fronczak, ASME 1992 (form and coefficients seen as
 * quoted); of the family of Wilson 1950 and Schlösser 1961. Check: {@code loss-model-flow-loss}, {@code loss-model-torque-loss},
 * {@code loss-model-pump-overall}, {@code loss-model-motor-overall}.
 *
 * @param displacement V at full stroke, m³/rev
 * @param slip C_s, unit 1
 * @param turbulentSlip C_st, unit 1
 * @param viscous C_v, unit 1
 * @param coulomb C_f, unit 1
 * @param hydrodynamic C_h, unit 1
 */
public record LossModel(
        double displacement, double slip, double turbulentSlip, double viscous, double coulomb, double hydrodynamic) {
    /** @throws IllegalArgumentException when the displacement is not positive or a coefficient is negative */
    public LossModel {
        if (!(displacement > 0)
                || !(slip >= 0)
                || !(turbulentSlip >= 0)
                || !(viscous >= 0)
                || !(coulomb >= 0)
                || !(hydrodynamic >= 0)) {
            throw new IllegalArgumentException("a loss model needs V > 0 and no negative coefficient: V " + displacement
                    + " m³, C_s " + slip + ", C_st " + turbulentSlip + ", C_v " + viscous + ", C_f " + coulomb
                    + ", C_h "
                    + hydrodynamic);
        }
    }

    /** Flow lost, m³/s. */
    public double flowLoss(RunningPoint point, WorkingFluid fluid) {
        double d = displacement / (2 * Math.PI); // m³ a radian
        double dp = point.pressureDifference(); // Δp, Pa
        return slip * d * dp / fluid.dynamicViscosity()
                + point.share() * d * point.speed() * dp / fluid.bulkModulus()
                + turbulentSlip * Math.pow(d, 2.0 / 3) * Math.sqrt(2 * dp / fluid.density());
    }

    /** Torque lost, N·m. */
    public double torqueLoss(RunningPoint point, WorkingFluid fluid) {
        double d = displacement / (2 * Math.PI); // m³ a radian
        double omega = point.speed(); // ω, rad/s
        return viscous * d * fluid.dynamicViscosity() * omega
                + coulomb * d * point.pressureDifference()
                + 0.5 * point.share() * hydrodynamic * fluid.density() * omega * omega * Math.pow(d, 5.0 / 3);
    }

    /** Efficiency as a pump; negative when the losses are larger than what is displaced. */
    public Efficiency asPump(RunningPoint point, WorkingFluid fluid) {
        IdealUnit ideal = ideal(point);
        return Efficiency.ofPump(
                ideal, ideal.flow() - flowLoss(point, fluid), ideal.torque() + torqueLoss(point, fluid));
    }

    /** Efficiency as a motor; negative when it cannot turn itself. */
    public Efficiency asMotor(RunningPoint point, WorkingFluid fluid) {
        IdealUnit ideal = ideal(point);
        return Efficiency.ofMotor(
                ideal, ideal.flow() + flowLoss(point, fluid), ideal.torque() - torqueLoss(point, fluid));
    }

    private IdealUnit ideal(RunningPoint point) {
        return new IdealUnit(point.share() * displacement, point.speed(), point.pressureDifference());
    }
}
