package swashlight.drive.oil;

/**
 * One oil at one temperature: how it thins, squeezes, foams and carries energy as pressure changes.
 *
 * <p>Liquid with free air, both obeying their own law, so that mass is conserved exactly:
 *
 * <pre>
 *   v(p) = (1 − x₀) v_l + x₀ r          volume of the mixture ÷ its volume at p₀
 *   v_l  = ((K₀ + m p)/(K₀ + m p₀))^(−1/m)   liquid with K_l = K₀ + m p
 *   r    = (p₀/p)^(1/κ)                 air
 *   K    = −v / (dv/dp)                 bulk modulus of the mixture, Pa
 *   w(p) = ∫ v dp from p₀               flow work; × 1/ρ₀ it is the specific enthalpy, J/m³
 *   ψ(p) = (1 − e^(−α_B (p − p₀)))/α_B  "gap pressure": laminar leak = G/μ₀ · (ψ₁ − ψ₂), Pa
 *
 *   p    absolute pressure              Pa     &gt; 0
 *   μ₀   dynamic viscosity at p₀        Pa·s
 * </pre>
 *
 * Below the cavity pressure the liquid lets go: the space then holds vapour as well, and what fills it is counted by the
 * solver (oil missing or pressure above the cavity pressure, never both).
 *
 * <p>Source: Merritt, Hydraulic Control Systems, 1967, ch. 1 (from memory); Barus law, Vacca and Franzoni 2021 §2.6.2.
 * The classical formula for K counts the air share without the liquid's own shrinkage; the difference stays below 0.05 %.
 * ψ is the exact integral of dp/μ for a gap of constant height. Check: {@code oil-mixture}, {@code oil-barus}.
 */
public final class OilAt {
    /** Pressure at which dry oil parts: about the vapour and released-air pressure, Pa (common practice, no source). */
    public static final double DRY_CAVITY_PRESSURE = 1_000.0;

    /** Gauge pressure above which viscosity is held, Pa: the exponential law overstates it there (common practice). */
    public static final double BARUS_LIMIT = 50e6;

    /** Water share beyond which free water boils in the suction side, 1 (solubility scale; common practice). */
    private static final double WATER_SCALE = 1e-3;

    private static final double LEAST_BARUS = 1e-12; // 1/Pa: below it viscosity does not depend on pressure

    private final Oil oil;
    private final double temperature;
    private final double density;
    private final double dynamicViscosity;
    private final double liquidBulkModulus;
    private final double cavityPressure;

    OilAt(Oil oil, double temperature) {
        if (!(temperature >= 230 && temperature <= 450)) {
            throw new IllegalArgumentException(
                    "oil temperature is " + temperature + " K; it must lie between 230 and 450 K");
        }
        this.oil = oil;
        this.temperature = temperature;
        this.density = oil.density(temperature);
        this.dynamicViscosity = oil.kinematicViscosity(temperature) * density;
        this.liquidBulkModulus =
                oil.bulkModulus40() * Math.exp(-oil.bulkModulusFade() * (temperature - Oil.COOL_REFERENCE));
        double wet = 1 - Math.exp(-oil.water() / WATER_SCALE);
        this.cavityPressure =
                Math.min(0.9 * Oil.ATMOSPHERE, DRY_CAVITY_PRESSURE + wet * waterVapourPressure(temperature));
    }

    /** The oil this is. */
    public Oil oil() {
        return oil;
    }

    /** Temperature T, K. */
    public double temperature() {
        return temperature;
    }

    /** Density ρ₀ of the liquid at atmospheric pressure, kg/m³. */
    public double density() {
        return density;
    }

    /** Dynamic viscosity μ₀ at atmospheric pressure, Pa·s. */
    public double dynamicViscosity() {
        return dynamicViscosity;
    }

    /** Dynamic viscosity μ = μ₀ e^(α_B (p − p₀)) at absolute pressure p (Pa), Pa·s (Barus). */
    public double dynamicViscosity(double pressure) {
        return dynamicViscosity * Math.exp(oil.pressureViscosity() * Math.min(pressure - Oil.ATMOSPHERE, BARUS_LIMIT));
    }

    /** Bulk modulus K₀ of the liquid at this temperature, Pa. */
    public double liquidBulkModulus() {
        return liquidBulkModulus;
    }

    /** Absolute pressure at which the oil parts, Pa: higher when water is in it. */
    public double cavityPressure() {
        return cavityPressure;
    }

    /** Volume of the mixture at absolute pressure p (Pa) ÷ its volume at p₀, unit 1. */
    public double relativeVolume(double pressure) {
        return (1 - oil.freeAir()) * liquidVolume(pressure) + oil.freeAir() * airVolume(pressure);
    }

    /** Bulk modulus K of the mixture at absolute pressure p (Pa), Pa. */
    public double bulkModulus(double pressure) {
        double liquid = (1 - oil.freeAir()) * liquidVolume(pressure);
        double air = oil.freeAir() * airVolume(pressure);
        double squeeze =
                liquid / (liquidBulkModulus + oil.bulkModulusSlope() * pressure) + air / (oil.airExponent() * pressure);
        return (liquid + air) / squeeze;
    }

    /**
     * All that a flow balance needs at one pressure, without allocation.
     *
     * @param pressure p, absolute, Pa
     * @param into receives density ÷ ρ₀ (1), its slope (1/Pa), gap pressure ψ (Pa) and its slope (1)
     * @param first index of the first of the four
     */
    public void evaluate(double pressure, double[] into, int first) {
        put(pressure, liquidVolume(pressure), airVolume(pressure), into, first);
    }

    /**
     * The same, and the flow work for little more.
     *
     * @return w(p), Pa (joule per cubic metre of oil measured at p₀)
     */
    public double evaluateWithWork(double pressure, double[] into, int first) {
        double liquid = liquidVolume(pressure);
        double air = airVolume(pressure);
        put(pressure, liquid, air, into, first);
        return flowWork(pressure, liquid, air);
    }

    private void put(double pressure, double liquidVolume, double airVolume, double[] into, int first) {
        double liquid = (1 - oil.freeAir()) * liquidVolume;
        double air = oil.freeAir() * airVolume;
        double volume = liquid + air;
        double squeeze =
                liquid / (liquidBulkModulus + oil.bulkModulusSlope() * pressure) + air / (oil.airExponent() * pressure);
        double gauge = pressure - Oil.ATMOSPHERE;
        double lawful = Math.min(gauge, BARUS_LIMIT);
        double thinning = Math.exp(-oil.pressureViscosity() * lawful);
        into[first] = 1 / volume;
        into[first + 1] = squeeze / (volume * volume);
        into[first + 2] = gapPressure(gauge, lawful, thinning);
        into[first + 3] = thinning;
    }

    /** Flow work w(p) = ∫ v dp from p₀ to absolute pressure p (Pa), J/m³ of oil measured at p₀. */
    public double flowWork(double pressure) {
        return flowWork(pressure, liquidVolume(pressure), airVolume(pressure));
    }

    private double flowWork(double pressure, double liquidVolume, double airVolume) {
        double m = oil.bulkModulusSlope();
        double base = liquidBulkModulus + m * Oil.ATMOSPHERE;
        double ratio = (liquidBulkModulus + m * pressure) / base;
        double liquid = base / (m - 1) * (ratio * liquidVolume - 1);
        double k = oil.airExponent();
        double air = k == 1
                ? Oil.ATMOSPHERE * Math.log(pressure / Oil.ATMOSPHERE)
                : k / (k - 1) * (pressure * airVolume - Oil.ATMOSPHERE);
        return (1 - oil.freeAir()) * liquid + oil.freeAir() * air;
    }

    /** Gap pressure ψ(p): laminar leakage is proportional to its difference, Pa. */
    public double gapPressure(double pressure) {
        double gauge = pressure - Oil.ATMOSPHERE;
        double lawful = Math.min(gauge, BARUS_LIMIT);
        return gapPressure(gauge, lawful, Math.exp(-oil.pressureViscosity() * lawful));
    }

    private double gapPressure(double gauge, double lawful, double thinning) {
        double a = oil.pressureViscosity();
        return a < LEAST_BARUS ? gauge : (1 - thinning) / a + (gauge - lawful) * thinning;
    }

    private double liquidVolume(double pressure) {
        double m = oil.bulkModulusSlope();
        return Math.exp(-Math.log((liquidBulkModulus + m * pressure) / (liquidBulkModulus + m * Oil.ATMOSPHERE)) / m);
    }

    private double airVolume(double pressure) {
        return Math.exp(-Math.log(pressure / Oil.ATMOSPHERE) / oil.airExponent());
    }

    /**
     * Saturation pressure of water: p = 610.94 Pa · exp(17.625 t/(t + 243.04)), t in °C.
     *
     * <p>Holds −40 … 100 °C within 1 % or so above 50 °C. Source: Alduchov and Eskridge, J. Appl. Meteor. 35 (1996) 601,
     * Magnus form (from memory).
     */
    private static double waterVapourPressure(double temperature) {
        double celsius = temperature - Oil.CELSIUS_ZERO;
        return 610.94 * Math.exp(17.625 * celsius / (celsius + 243.04));
    }
}
