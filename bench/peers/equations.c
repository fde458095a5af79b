/* All rates at once. State: pump chambers, motor chambers, pA, pB, pG, engine, pump and motor speed, ground speed, pump and motor angle. */
#include "peer.h"
#include <math.h>

int drive_size(const Drive *d) { return d->pump.count + d->motor.count + 9; }

int drive_angle(const Drive *d, int i) { return i >= drive_size(d) - 2; }

/* What an absolute tolerance is measured by: 1 bar, 1 rad/s, 1 m/s, 0.01 rad. */
double drive_scale(const Drive *d, int i) { return i < drive_size(d) - 6 ? 1e5 : drive_angle(d, i) ? 0.01 : 1; }

void drive_start(const Drive *d, double *y) {
    int n = drive_size(d);
    for (int i = 0; i < n; i++) y[i] = i < n - 6 ? d->oil.ambient : 0;
    y[n - 6] = d->full_speed;
    y[n - 5] = d->full_speed * d->belt_ratio;
}

void drive_rates(const Drive *d, double t, const double *y, double *rate, double *seen) {
    const double *pump = y, *motor = y + d->pump.count, *side = motor + d->motor.count, *speed = side + 3;
    double engine = speed[0], pump_speed = speed[1], motor_speed = speed[2], ground = speed[3];
    double into[3] = {0, 0, 0}, pump_torque, motor_torque, pump_load, motor_load, angle, angle_rate;
    swash(d, t, &angle, &angle_rate);
    double tangent = tan(angle), fixed = tan(d->motor.full_angle);
    unit_flows(d, &d->pump, pump, side, speed[4], pump_speed, tangent, (1 + tangent * tangent) * angle_rate, rate, into, &pump_torque,
               &pump_load);
    unit_flows(d, &d->motor, motor, side, speed[5], motor_speed, fixed, 0, rate + d->pump.count, into, &motor_torque, &motor_load);
    double made_up = loop_flows(d, side, into);
    double *r = rate + d->pump.count + d->motor.count;
    for (int s = A; s <= G; s++) {
        double density, slope, psi;
        oil_at(&d->oil, side[s], &density, &slope, &psi);
        r[s] = into[s] / (d->volume[s] * slope);
    }
    double belt = belt_torque(d, engine, pump_speed);
    r[3] = (engine_torque(d, engine) - d->other - d->belt_ratio * belt) / d->engine_inertia;
    r[4] = (belt + pump_torque - dry_and_wet(d, &d->pump, pump_load, tangent, sin(angle), pump_speed)) / d->pump.inertia;
    double force = ground_force(d, motor_speed * d->radius / d->ratio, ground);
    double axle = force * d->radius + d->drag * rounded_sign(motor_speed);
    double driving = axle / (d->ratio * d->efficiency), driven = axle * d->efficiency / d->ratio;
    double geared = (driving + driven) / 2 + fabs(driving - driven) / 2 * rounded_sign(motor_speed);
    double losses = dry_and_wet(d, &d->motor, motor_load, fixed, sin(d->motor.full_angle), motor_speed);
    r[5] = (motor_torque - losses - geared) / d->motor.inertia;
    double resist = d->rolling * d->weight * cos(d->slope) * ground / sqrt(1e-6 + ground * ground);
    r[6] = (force - d->weight * sin(d->slope) - resist) / d->mass;
    r[7] = pump_speed;
    r[8] = motor_speed;
    if (seen) {
        const double all[SEEN] = {side[A], side[B], side[G], -pump_torque, motor_torque, motor_speed, ground, made_up};
        for (int i = 0; i < SEEN; i++) seen[i] = all[i];
    }
}
