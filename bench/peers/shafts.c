/* Torques of friction, engine and belt; force of the wheels; angle of the swash plate. */
#include "peer.h"
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

static const double STICTION_SPEED = 0.2, CRAWL = 0.05; /* rad/s, m/s */

double rounded_sign(double omega) { return omega / sqrt(STICTION_SPEED * STICTION_SPEED + omega * omega); }

double dry_and_wet(const Drive *d, const Unit *u, double load, double tan_angle, double sine, double omega) {
    double x = omega / (4 * STICTION_SPEED);
    double dry = fmax(0, load) * u->area * u->pitch * (u->friction * fabs(sine) + u->thrust);
    double wet = d->oil.viscosity * (u->face_drag + u->piston_drag * tan_angle * tan_angle);
    return dry * (1 + (u->breakaway - 1) * exp(-x * x)) * rounded_sign(omega) + wet * omega + u->churn * omega * fabs(omega);
}

double engine_torque(const Drive *d, double omega) {
    double governed = d->full_speed * (1 - d->droop);
    if (omega >= governed) return d->rated * (d->full_speed - omega) / (d->droop * d->full_speed);
    double peak_speed = fmin(d->peak_share * d->full_speed, governed - 0.01 * d->full_speed);
    if (omega <= peak_speed) return d->peak;
    double x = (omega - peak_speed) / (governed - peak_speed);
    return d->peak - (d->peak - d->rated) * x * x;
}

double belt_torque(const Drive *d, double engine, double pump) {
    double slip = 1 - pump / (d->belt_ratio * engine);
    return copysign(d->belt_capacity * -expm1(-fabs(slip) / d->belt_creep), slip);
}

double ground_force(const Drive *d, double rim, double ground) {
    double slip = (rim - ground) / (fmax(fabs(rim), fabs(ground)) + CRAWL);
    double most = d->traction * d->load_share * d->weight * cos(d->slope);
    return copysign(most * -expm1(-d->stiffness * fabs(slip)), slip);
}

void swash(const Drive *d, double t, double *angle, double *rate) {
    double t0 = d->corner_time[0], t1 = d->corner_time[1];
    double per = (d->corner_stroke[1] - d->corner_stroke[0]) / (t1 - t0);
    double stroke = t <= t0 ? d->corner_stroke[0] : t >= t1 ? d->corner_stroke[1] : d->corner_stroke[0] + per * (t - t0);
    double asked = stroke * d->forward_share * d->pump.full_angle - d->play;
    *angle = fmax(0, asked) + d->neutral;
    *rate = asked > 0 && t > t0 && t < t1 ? per * d->forward_share * d->pump.full_angle : 0;
    if (fabs(*rate) > d->swash_rate || stroke < 0 || *angle > d->pump.full_angle) {
        fprintf(stderr, "the peer does not compute a plate that cannot follow, nor reverse\n");
        exit(2);
    }
}
