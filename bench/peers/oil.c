/* Oil: liquid with free air, thickening with pressure, parting at its cavity pressure. */
#include "peer.h"
#include <math.h>
#include <stdlib.h>

static const double ATMOSPHERE = 101325, BARUS_LIMIT = 50e6;

static double lglg(double viscosity) { return log10(log10(viscosity * 1e6 + 0.7)); }

static void laws(const Oil *o, double p, double *density, double *slope, double *psi) {
    double k = o->modulus + o->modulus_slope * p;
    double k0 = o->modulus + o->modulus_slope * ATMOSPHERE;
    double liquid = (1 - o->air) * pow(k / k0, -1 / o->modulus_slope);
    double air = o->air * pow(p / ATMOSPHERE, -1 / o->air_exponent);
    double volume = liquid + air;
    *density = 1 / volume;
    *slope = (liquid / k + air / (o->air_exponent * p)) / (volume * volume);
    double gauge = p - ATMOSPHERE, held = fmin(gauge, BARUS_LIMIT);
    *psi = -expm1(-o->barus * held) / o->barus + (gauge - held) * exp(-o->barus * held);
}

void oil_set(Oil *o) {
    double v40 = law("oil.viscosity40"), v100 = law("oil.viscosity100");
    double m = (lglg(v40) - lglg(v100)) / (log10(373.15) - log10(313.15));
    double shifted = pow(10, pow(10, lglg(v40) - m * (log10(o->kelvin) - log10(313.15))));
    o->density = law("oil.density15") / (1 + law("oil.thermalExpansion") * (o->kelvin - 288.15));
    o->viscosity = law("oil.viscosityFactor") * (shifted - 0.7) * 1e-6 * o->density;
    o->modulus = law("oil.bulkModulus40") * exp(-law("oil.bulkModulusFade") * (o->kelvin - 313.15));
    o->modulus_slope = law("oil.bulkModulusSlope");
    o->air = law("oil.freeAir") + law("makeUp.airDrawn");
    o->air_exponent = law("oil.airExponent");
    o->barus = law("oil.pressureViscosity");
    double celsius = o->kelvin - 273.15;
    double vapour = 610.94 * exp(17.625 * celsius / (celsius + 243.04));
    o->cavity = 1000 + (1 - exp(-law("oil.water") / 1e-3)) * vapour;
    double slope;
    laws(o, o->cavity, &o->cavity_density, &slope, &o->cavity_psi);
    laws(o, o->ambient, &slope, &slope, &o->psi_case);
}

/* 4096 even cells of the cube root of pressure, cubic in each: as cheap as the kernel's own table. */
enum { CELLS = 4096 };
static double table[CELLS][8];
static double table_first, table_step;
static int tabled;

void oil_table(const Oil *o) {
    table_first = cbrt(o->cavity);
    table_step = (cbrt(5e8) - table_first) / CELLS;
    for (int i = 0; i < CELLS; i++) {
        double lo = pow(table_first + i * table_step, 3), hi = pow(table_first + (i + 1) * table_step, 3);
        double d0, s0, g0, d1, s1, g1, w = hi - lo;
        laws(o, lo, &d0, &s0, &g0);
        laws(o, hi, &d1, &s1, &g1);
        double h0 = w * exp(-o->barus * fmin(lo - ATMOSPHERE, BARUS_LIMIT)), h1 = w * exp(-o->barus * fmin(hi - ATMOSPHERE, BARUS_LIMIT));
        double *c = table[i];
        s0 *= w;
        s1 *= w;
        c[0] = lo;
        c[1] = 1 / w;
        c[2] = d0;
        c[3] = s0;
        c[4] = 3 * (d1 - d0) - 2 * s0 - s1;
        c[5] = 2 * (d0 - d1) + s0 + s1;
        c[6] = g0; /* gap pressure: value by a line through its slopes is enough at this width */
        c[7] = (h0 + h1) / 2;
    }
    tabled = 1;
}

void oil_at(const Oil *o, double p, double *density, double *slope, double *psi) {
    if (p < o->cavity) {
        *slope = o->cavity_density / (0.2 * o->cavity);
        *density = *slope * (p - 0.8 * o->cavity);
        *psi = o->cavity_psi + (p - o->cavity);
    } else if (tabled) {
        int i = (int)((cbrt(p) - table_first) / table_step);
        const double *c = table[i < CELLS ? i : CELLS - 1];
        double s = (p - c[0]) * c[1];
        *density = c[2] + s * (c[3] + s * (c[4] + s * c[5]));
        *slope = (c[3] + s * (2 * c[4] + 3 * s * c[5])) * c[1];
        *psi = c[6] + s * c[7];
    } else {
        laws(o, p, density, slope, psi);
    }
}
