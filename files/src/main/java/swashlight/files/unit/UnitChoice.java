package swashlight.files.unit;

import swashlight.drive.description.Dimension;

/** Which unit suits a value: what the trade uses for that size. Common practice, no source. */
final class UnitChoice {
    private UnitChoice() {}

    static Unit of(UnitSystem system, Dimension dimension, double size) {
        String label = system == UnitSystem.SI ? metric(dimension, size) : customary(dimension, size);
        return UnitTable.find(dimension, label).orElseThrow();
    }

    private static String metric(Dimension dimension, double size) {
        return switch (dimension) {
            case NUMBER -> "1";
            case LENGTH -> size > 0 && size < 2e-4 ? "µm" : size < 0.2 ? "mm" : "m";
            case AREA -> "mm2";
            case VOLUME -> size < 1e-3 ? "cm3" : "L";
            case DISPLACEMENT -> "cm3/rev";
            case ANGLE -> "deg";
            case SPEED -> size < 0.1 ? "mm/s" : "km/h";
            case ROTATION -> "rpm";
            case ANGLE_RATE -> "deg/s";
            case MASS -> "kg";
            case FORCE -> size < 1e4 ? "N" : "kN";
            case TORQUE -> "N.m";
            case INERTIA -> size < 0.01 ? "kg.cm2" : "kg.m2";
            case STIFFNESS -> "N.m/rad";
            case PRESSURE -> size < 1e5 ? "kPa" : size < 2e8 ? "bar" : "MPa";
            case PER_PRESSURE -> "1/GPa";
            case FLOW -> size < 1e-5 ? "mL/min" : "L/min";
            case FLOW_PER_PRESSURE -> "L/(min.bar)";
            case PER_VOLUME -> "1/mm3";
            case VISCOSITY -> "mm2/s";
            case DENSITY -> "kg/m3";
            case TEMPERATURE -> "°C";
            case PER_TEMPERATURE -> "1/K";
            case HEAT_CAPACITY -> "kJ/K";
            case HEAT_CONDUCTANCE -> "W/K";
            case POWER -> size < 1e3 ? "W" : "kW";
            case TIME -> size < 300 ? "s" : size < 7200 ? "min" : "h";
            case FREQUENCY -> "Hz";
        };
    }

    private static String customary(Dimension dimension, double size) {
        return switch (dimension) {
            case NUMBER -> "1";
            case LENGTH -> size < 1 ? "in" : "ft";
            case AREA -> "in2";
            case VOLUME -> size < 1e-3 ? "in3" : "gal";
            case DISPLACEMENT -> "in3/rev";
            case ANGLE -> "deg";
            case SPEED -> size < 0.1 ? "in/s" : "mph";
            case ROTATION -> "rpm";
            case ANGLE_RATE -> "deg/s";
            case MASS -> "lb";
            case FORCE -> "lbf";
            case TORQUE -> size < 3 ? "in.lbf" : "ft.lbf";
            case INERTIA -> size < 0.01 ? "lb.in2" : "lb.ft2";
            case STIFFNESS -> "ft.lbf/rad";
            case PRESSURE -> "psi";
            case PER_PRESSURE -> "1/psi";
            case FLOW -> size < 1e-5 ? "in3/min" : "gpm";
            case FLOW_PER_PRESSURE -> "gpm/psi";
            case PER_VOLUME -> "1/in3";
            case VISCOSITY -> "cSt";
            case DENSITY -> "lb/ft3";
            case TEMPERATURE -> "°F";
            case PER_TEMPERATURE -> "1/°F";
            case HEAT_CAPACITY -> "Btu/°F";
            case HEAT_CONDUCTANCE -> "Btu/(h.°F)";
            case POWER -> size < 75 ? "W" : "hp";
            case TIME -> size < 300 ? "s" : size < 7200 ? "min" : "h";
            case FREQUENCY -> "Hz";
        };
    }
}
