package swashlight.files.unit;

import static swashlight.drive.description.Dimension.*;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import swashlight.drive.description.Dimension;

/**
 * The units that files may use. Factors are exact by definition or products of exact ones.
 *
 * <p>Source: NIST SP 811 (2008), appendix B (definitions, from memory); the absolute values printed there are compared in the test.
 */
public final class UnitTable {
    private static final Fraction ONE = Fraction.ONE;
    private static final Fraction INCH = Fraction.of("0.0254"); // m, exact
    private static final Fraction FOOT = Fraction.of("0.3048"); // m, exact
    private static final Fraction POUND = Fraction.of("0.45359237"); // kg, exact
    private static final Fraction GRAVITY = Fraction.of("9.80665"); // m/s², exact
    private static final Fraction POUND_FORCE = POUND.times(GRAVITY); // N
    private static final Fraction GALLON = INCH.power(3).times("231"); // m³, US, exact
    private static final Fraction PSI = POUND_FORCE.over(INCH.power(2)); // Pa
    private static final Fraction BTU = Fraction.of("1055.05585262"); // J, international table
    private static final Fraction FAHRENHEIT = Fraction.of("5").over("9"); // K
    private static final Fraction DEGREE = Fraction.PI.over("180"); // rad
    private static final Fraction RPM = Fraction.PI.over("30"); // rad/s
    private static final Fraction LITRE = Fraction.of("1e-3"); // m³
    private static final Fraction MINUTE = Fraction.of("60"); // s
    private static final Fraction CM3 = Fraction.of("1e-6"); // m³
    private static final Fraction BAR = Fraction.of("1e5"); // Pa

    private static final Map<Dimension, UnitList> UNITS = units();

    private UnitTable() {}

    /** All units of a dimension; the SI unit first. */
    public static List<Unit> of(Dimension dimension) {
        return UNITS.get(dimension).all();
    }

    /** The unit somebody wrote, if it is one of this dimension; spelling is taken generously. */
    public static Optional<Unit> find(Dimension dimension, String written) {
        return UNITS.get(dimension).find(written);
    }

    private static Map<Dimension, UnitList> units() {
        UnitLists lists = new UnitLists();
        sizes(lists);
        motion(lists);
        forces(lists);
        oil(lists);
        heat(lists);
        return lists.done();
    }

    private static void sizes(UnitLists lists) {
        lists.of(NUMBER).add("", ONE, "1", ":1").add("%", "1e-2", "percent").add("ppm", "1e-6");
        lists.of(LENGTH)
                .add("m", ONE, "metre", "meter")
                .add("mm", "1e-3")
                .add("cm", "1e-2")
                .add("µm", "1e-6", "um", "micron", "microns", "micrometre", "micrometer")
                .add("in", INCH, "inch", "inches", "\"", "″")
                .add("ft", FOOT, "foot", "feet")
                .add("thou", INCH.over("1000"), "mil")
                .add("yd", FOOT.times("3"), "yard", "yards");
        lists.of(AREA)
                .add("m2", ONE)
                .add("mm2", "1e-6", "sqmm")
                .add("cm2", "1e-4")
                .add("in2", INCH.power(2), "sqin")
                .add("ft2", FOOT.power(2), "sqft");
        lists.of(VOLUME)
                .add("m3", ONE)
                .add("cm3", CM3, "cc", "ccm", "mL", "ml")
                .add("L", LITRE, "l", "litre", "liter", "litres", "liters", "dm3")
                .add("mm3", "1e-9")
                .add("in3", INCH.power(3), "cuin", "ci")
                .add("gal", GALLON, "gallon", "gallons")
                .add("qt", GALLON.over("4"), "quart", "quarts")
                .add("ft3", FOOT.power(3), "cuft");
        lists.of(DISPLACEMENT)
                .add("m3/rev", ONE)
                .add("cm3/rev", CM3, "cm3", "cc", "cc/rev", "ccm", "ccm/rev", "mL/rev", "ml/rev", "cm3/r", "cc/r")
                .add("in3/rev", INCH.power(3), "in3", "cuin", "ci", "cuin/rev", "ci/rev", "in3/r")
                .add("L/rev", LITRE);
        lists.of(PER_VOLUME)
                .add("1/m3", ONE)
                .add("1/mm3", "1e9")
                .add("1/cm3", "1e6")
                .add("1/L", "1e3")
                .add("1/in3", ONE.over(INCH.power(3)))
                .add("1/gal", ONE.over(GALLON));
        lists.of(ANGLE)
                .add("rad", ONE, "radian", "radians")
                .add("deg", DEGREE, "°", "degree", "degrees")
                .add("mrad", "1e-3");
    }

    private static void motion(UnitLists lists) {
        lists.of(SPEED)
                .add("m/s", ONE)
                .add("km/h", ONE.over("3.6"), "kmh", "kph", "km/hr")
                .add("cm/s", "1e-2")
                .add("mm/s", "1e-3")
                .add("m/min", ONE.over(MINUTE))
                .add("mph", FOOT.times("5280").over("3600"), "mi/h", "MPH")
                .add("ft/s", FOOT, "fps")
                .add("ft/min", FOOT.over(MINUTE), "fpm")
                .add("in/s", INCH);
        lists.of(ROTATION)
                .add("rad/s", ONE)
                .add("rpm", RPM, "RPM", "rev/min", "r/min", "1/min", "min-1", "/min")
                .add("rev/s", RPM.times(MINUTE), "r/s", "rps")
                .add("deg/s", DEGREE, "°/s");
        lists.of(ANGLE_RATE).add("rad/s", ONE).add("deg/s", DEGREE, "°/s").add("mrad/s", "1e-3");
        lists.of(TIME)
                .add("s", ONE, "sec", "second", "seconds")
                .add("min", MINUTE, "minute", "minutes")
                .add("h", "3600", "hr", "hour", "hours")
                .add("ms", "1e-3");
        lists.of(FREQUENCY).add("Hz", ONE, "1/s", "hertz").add("kHz", "1e3").add("1/min", ONE.over(MINUTE), "min-1");
    }

    private static void forces(UnitLists lists) {
        lists.of(MASS)
                .add("kg", ONE)
                .add("g", "1e-3")
                .add("t", "1e3", "tonne")
                .add("lb", POUND, "lbs", "lbm", "pounds");
        lists.of(FORCE)
                .add("N", ONE)
                .add("kN", "1e3")
                .add("daN", "10")
                .add("lbf", POUND_FORCE, "lb", "lbs", "pounds")
                .add("kgf", GRAVITY, "kp");
        Fraction footPound = FOOT.times(POUND_FORCE);
        Fraction inchPound = INCH.times(POUND_FORCE);
        lists.of(TORQUE)
                .add("N.m", ONE)
                .add("kN.m", "1e3")
                .add("daN.m", "10")
                .add("N.cm", "1e-2")
                .add("ft.lbf", footPound, "ft.lb", "lb.ft", "lbf.ft", "ft.lbs", "lbs.ft")
                .add("in.lbf", inchPound, "in.lb", "lb.in", "lbf.in", "in.lbs", "lbs.in")
                .add("kgf.m", GRAVITY, "kp.m");
        lists.of(INERTIA)
                .add("kg.m2", ONE)
                .add("kg.cm2", "1e-4")
                .add("g.m2", "1e-3")
                .add("g.cm2", "1e-7")
                .add("lb.ft2", POUND.times(FOOT.power(2)))
                .add("lb.in2", POUND.times(INCH.power(2)));
        lists.of(STIFFNESS)
                .add("N.m/rad", ONE)
                .add("N.m/deg", ONE.over(DEGREE), "N.m/°")
                .add("kN.m/rad", "1e3")
                .add("kN.m/deg", Fraction.of("1e3").over(DEGREE), "kN.m/°")
                .add("ft.lbf/rad", footPound, "ft.lb/rad", "lb.ft/rad")
                .add("ft.lbf/deg", footPound.over(DEGREE), "ft.lb/deg", "lb.ft/deg")
                .add("in.lbf/rad", inchPound, "in.lb/rad", "lb.in/rad")
                .add("in.lbf/deg", inchPound.over(DEGREE), "in.lb/deg", "lb.in/deg");
        lists.of(POWER)
                .add("W", ONE)
                .add("kW", "1e3")
                .add("hp", footPound.times("550"), "HP", "bhp")
                .add("PS", GRAVITY.times("75"), "ps")
                .add("Btu/h", BTU.over("3600"), "BTU/h", "Btu/hr");
    }

    private static void oil(UnitLists lists) {
        lists.of(PRESSURE)
                .add("Pa", ONE)
                .add("kPa", "1e3")
                .add("MPa", "1e6", "N/mm2")
                .add("GPa", "1e9")
                .add("bar", BAR)
                .add("mbar", "1e2")
                .add("psi", PSI, "PSI", "lbf/in2", "lb/in2")
                .add("ksi", PSI.times("1000"))
                .add("kgf/cm2", GRAVITY.times("1e4"))
                .add("atm", "101325");
        lists.of(PER_PRESSURE)
                .add("1/Pa", ONE)
                .add("1/MPa", "1e-6")
                .add("1/GPa", "1e-9")
                .add("1/bar", ONE.over(BAR))
                .add("1/psi", ONE.over(PSI));
        lists.of(FLOW)
                .add("m3/s", ONE)
                .add("L/min", LITRE.over(MINUTE), "l/min", "lpm", "dm3/min", "LPM")
                .add("L/s", LITRE, "l/s")
                .add("L/h", LITRE.over("3600"), "l/h")
                .add("m3/h", ONE.over("3600"))
                .add("cm3/s", CM3, "cc/s", "mL/s", "ml/s")
                .add("mL/min", CM3.over(MINUTE), "ml/min", "cm3/min", "cc/min")
                .add("mm3/s", "1e-9")
                .add("gpm", GALLON.over(MINUTE), "gal/min", "gpm(US)", "USgpm", "GPM", "gal(US)/min")
                .add("in3/s", INCH.power(3), "cuin/s", "ci/s")
                .add("in3/min", INCH.power(3).over(MINUTE), "cuin/min", "ci/min")
                .add("ft3/s", FOOT.power(3));
        lists.of(FLOW_PER_PRESSURE)
                .add("m3/(s.Pa)", ONE, "m3/s/Pa")
                .add("L/(min.bar)", LITRE.over(MINUTE).over(BAR), "L/min/bar", "l/min/bar", "l/(min.bar)")
                .add("mL/(min.bar)", CM3.over(MINUTE).over(BAR), "mL/min/bar", "ml/min/bar", "cm3/(min.bar)")
                .add("gpm/psi", GALLON.over(MINUTE).over(PSI))
                .add("in3/(s.psi)", INCH.power(3).over(PSI), "in3/s/psi");
        lists.of(VISCOSITY)
                .add("m2/s", ONE)
                .add("mm2/s", "1e-6")
                .add("cSt", "1e-6", "cst", "CST")
                .add("St", "1e-4")
                .add("in2/s", INCH.power(2));
        lists.of(DENSITY)
                .add("kg/m3", ONE)
                .add("g/cm3", "1e3", "g/cc", "g/mL", "g/ml", "kg/L", "kg/l", "kg/dm3")
                .add("g/L", ONE, "g/l")
                .add("lb/ft3", POUND.over(FOOT.power(3)))
                .add("lb/gal", POUND.over(GALLON));
    }

    private static void heat(UnitLists lists) {
        lists.of(TEMPERATURE)
                .add("K", ONE, "kelvin")
                .addShifted("°C", ONE, "273.15", "C", "degC", "deg.C", "celsius", "Celsius")
                .addShifted("°F", FAHRENHEIT, "459.67", "F", "degF", "deg.F", "fahrenheit", "Fahrenheit");
        lists.of(PER_TEMPERATURE).add("1/K", ONE, "1/°C", "1/degC", "K-1").add("1/°F", ONE.over(FAHRENHEIT), "1/degF");
        lists.of(HEAT_CAPACITY)
                .add("J/K", ONE, "J/°C", "J/degC")
                .add("kJ/K", "1e3", "kJ/°C", "kJ/degC")
                .add("Btu/°F", BTU.over(FAHRENHEIT), "BTU/°F", "Btu/degF", "BTU/degF");
        lists.of(HEAT_CONDUCTANCE)
                .add("W/K", ONE, "W/°C", "W/degC")
                .add("kW/K", "1e3")
                .add("Btu/(h.°F)", BTU.over("3600").over(FAHRENHEIT), "Btu/h/°F", "Btu/(h.degF)", "BTU/(h.°F)");
    }
}
