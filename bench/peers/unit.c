/* One pump or motor: geometry, gaps, port areas, chambers. */
#include "peer.h"
#include <math.h>
#include <stdio.h>

static double part(const char *unit, const char *what) {
    char key[64];
    snprintf(key, sizeof key, "%s.%s", unit, what);
    return law(key);
}

static double cube(double x) { return x * x * x; }

void unit_set(Unit *u, const char *name, double sign, const Oil *o) {
    double d = part(name, "pistonDiameter"), c = part(name, "boreClearance"), e = part(name, "boreEccentricity");
    u->sign = sign;
    u->count = (int)part(name, "pistonCount");
    u->area = M_PI / 4 * d * d;
    u->pitch = part(name, "pitchRadius");
    u->mid = part(name, "chamberMidVolume");
    u->engaged = part(name, "engagedLength");
    u->ring = M_PI * d * cube(c) * (1 + 1.5 * e * e) / 12;
    u->port = part(name, "portArea");
    u->overlap = part(name, "portOverlap");
    u->ramp = part(name, "portRamp");
    u->groove = part(name, "grooveArea");
    u->groove_angle = part(name, "grooveAngle");
    u->full_angle = part(name, "fullSwashAngle");
    u->friction = part(name, "frictionCoefficient");
    u->thrust = part(name, "thrustFriction");
    u->breakaway = part(name, "breakawayRatio");
    u->inertia = part(name, "inertia");
    double h = part(name, "faceGap"), span = part(name, "kidneySpan");
    double r1 = part(name, "landInner"), r2 = part(name, "kidneyInner"), r3 = part(name, "kidneyOuter"), r4 = part(name, "landOuter");
    u->face_case = span * cube(h) / 12 * (1 / log(r2 / r1) + 1 / log(r4 / r3));
    u->face_across = 2 * (r3 - r2) * cube(h) / (12 * (M_PI - span) * (r2 + r3) / 2);
    u->face_drag = M_PI * (pow(r4, 4) - pow(r1, 4)) / (2 * h);
    u->piston_drag = u->count * M_PI * d * u->engaged * u->pitch * u->pitch / (2 * c);
    u->churn = part(name, "churningCoefficient") * pow(r4, 5) / 2 * o->density;
}

static double smooth(double u) { return u <= 0 ? 0 : u >= 1 ? 1 : u * u * (3 - 2 * u); }

double port_area(const Unit *u, double phi) {
    double area = u->port * smooth((phi - u->overlap) / u->ramp + 0.5) * smooth((M_PI - u->overlap - phi) / u->ramp + 0.5);
    if (u->groove > 0 && u->groove_angle > 0) {
        area += u->groove * smooth((phi - u->overlap) / u->groove_angle + 1) *
                smooth((M_PI - u->overlap - phi) / u->groove_angle + 1);
    }
    return area;
}

double through(double gain, double drop) { return gain > 0 ? gain * drop / sqrt(sqrt(drop * drop + 20e3 * 20e3)) : 0; }

/* phi brought into [-pi/2, 3 pi/2) */
static double wrapped(double phi) { return phi - 2 * M_PI * floor((phi + M_PI / 2) / (2 * M_PI)); }

void unit_flows(const Drive *d, const Unit *u, const double *p, const double *side, double theta, double omega, double tan_angle,
                double tan_rate, double *rate, double into[2], double *torque, double *load) {
    double tan_signed = u->sign * tan_angle;
    *torque = 0;
    *load = 0;
    for (int k = 0; k < u->count; k++) {
        double phi = theta + 2 * M_PI * k / u->count, cosine = cos(phi);
        double reach = u->area * u->pitch;
        double volume = u->mid + reach * tan_signed * cosine;
        double turned = -reach * tan_signed * sin(phi); /* dV/dtheta */
        double density, slope, psi;
        oil_at(&d->oil, p[k], &density, &slope, &psi);
        double from_a = through(d->orifice * port_area(u, wrapped(phi)), side[A] - p[k]);
        double from_b = through(d->orifice * port_area(u, wrapped(phi - M_PI)), side[B] - p[k]);
        double leak = u->ring / (u->engaged - u->pitch * tan_signed * cosine) / d->oil.viscosity * (psi - d->oil.psi_case);
        double grows = turned * omega + reach * u->sign * tan_rate * cosine;
        rate[k] = (from_a + from_b - leak - density * grows) / (volume * slope);
        into[A] -= from_a;
        into[B] -= from_b;
        *torque += (p[k] - d->oil.ambient) * turned;
        *load += p[k] - d->oil.ambient;
    }
}
