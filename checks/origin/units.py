"""Units of the check rows, stated here a second time and on purpose, so that the Java table has something to differ from."""
from math import pi

INCH, FOOT, POUND, GRAVITY = 0.0254, 0.3048, 0.45359237, 9.80665
LBF = POUND * GRAVITY
FACTOR = {
    "1": 1, "%": 1e-2, "rev": 1,
    "m": 1, "cm": 1e-2, "mm": 1e-3, "um": 1e-6, "in": INCH, "ft": FOOT, "mile": 1609.344,
    "m2": 1, "cm2": 1e-4, "mm2": 1e-6, "in2": 6.4516e-4, "m3": 1, "L": 1e-3, "cm3": 1e-6, "in3": 1.6387064e-5,
    "gal": 3.785411784e-3, "cm3/rev": 1e-6, "in3/rev": 1.6387064e-5,
    "rad": 1, "deg": pi / 180, "s": 1, "min": 60, "h": 3600, "m/s": 1, "m/s2": 1, "km/h": 1 / 3.6, "mph": 0.44704, "ft/s": FOOT,
    "rad/s": 1, "rpm": pi / 30, "Hz": 1, "1/s": 1,
    "kg": 1, "lb": POUND, "lbf.s2/in": LBF / INCH, "kg.m2": 1, "N": 1, "kN": 1e3, "lbf": LBF, "kgf": GRAVITY,
    "N.m": 1, "N.m.s": 1, "in.lbf": INCH * LBF, "ft.lbf": FOOT * LBF,
    "Pa": 1, "kPa": 1e3, "MPa": 1e6, "GPa": 1e9, "bar": 1e5, "atm": 101325, "psi": LBF / 6.4516e-4,
    "1/Pa": 1, "1/bar": 1e-5, "1/psi": 6.4516e-4 / LBF, "Pa/K": 1, "bar/K": 1e5,
    "W": 1, "kW": 1e3, "hp": 550 * FOOT * LBF, "PS": 735.49875, "Btu/h": 1055.05585262 / 3600,
    "m3/s": 1, "L/s": 1e-3, "L/min": 1 / 6e4, "mL/min": 1 / 6e7, "cm3/s": 1e-6, "mm3/s": 1e-9,
    "gpm": 3.785411784e-3 / 60, "ft3/s": FOOT**3, "m3/(s.Pa)": 1,
    "m2/s": 1, "mm2/s": 1e-6, "Pa.s": 1, "mPa.s": 1e-3, "kg/m3": 1,
    "K": 1, "degC": 1, "degF": 5 / 9, "1/K": 1, "1/degF": 1.8, "J/K": 1, "J/(kg.K)": 1, "kJ/(kg.K)": 1e3,
    "W/K": 1, "W/(m.K)": 1, "W/(m2.K)": 1,
}
OFFSET = {"degC": 273.15, "degF": 459.67}


def si(text):
    """'57.6 mm3/s' in SI; a number alone has the unit 1."""
    number, _, unit = text.strip().partition(" ")
    unit = unit.strip() or "1"
    return FACTOR[unit] * (float(number) + OFFSET.get(unit, 0))


def si_difference(text):
    number, _, unit = text.strip().partition(" ")
    return FACTOR[unit.strip() or "1"] * float(number)
