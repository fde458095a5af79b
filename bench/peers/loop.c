/* The two sides and the make-up gallery. */
#include "peer.h"
#include <math.h>

/* rises smoothly from 0 over a twentieth of the setting, then straight */
static double knee(double over, double setting) {
    double width = 0.05 * setting + 1;
    return over <= 0 ? 0 : over < width ? over * over / (2 * width) : over - width / 2;
}

static double check(const Drive *d, int side, double drop) {
    double x = (drop - d->check_crack) / d->check_span;
    double lift = x <= 0 ? 0 : x >= 1 ? 1 : x * x * (3 - 2 * x);
    lift = fmax(d->least[side], fmin(lift, d->reach[side]));
    return through(d->orifice * (d->seat[side] + d->check_area * lift), drop);
}

double loop_flows(const Drive *d, const double *p, double into[3]) {
    double psi[2], skip;
    for (int s = A; s <= B; s++) {
        oil_at(&d->oil, p[s], &skip, &skip, &psi[s]);
        into[s] -= (d->pump.face_case + d->motor.face_case) / d->oil.viscosity * (psi[s] - d->oil.psi_case);
        into[s] -= 1e-10 * knee(p[s] - d->oil.ambient - 60e6, 60e6); /* seals give way */
        double fed = check(d, s, p[G] - p[s]);
        into[s] += fed;
        into[G] -= fed;
        if (d->relief[s] > 0) {
            double relieved = d->relief_slope * knee(p[s] - p[1 - s] - d->relief[s], d->relief[s]);
            into[s] -= relieved;
            into[1 - s] += relieved;
        }
    }
    double across = (d->pump.face_across + d->motor.face_across) / d->oil.viscosity * (psi[A] - psi[B]);
    into[A] -= across;
    into[B] += across;
    double made_up = d->filter * (d->oil.ambient - p[G]);
    into[G] += made_up;
    return made_up;
}
