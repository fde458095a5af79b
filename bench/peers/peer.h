/* The drive, written a second time: from its description in SI to the right-hand side of its equations, and nothing shared with the Java
 * kernel but the description file. Laws: docs/model.md. */
#ifndef PEER_H
#define PEER_H

enum { MOST_PISTONS = 15, A = 0, B = 1, G = 2 };

typedef struct {
    double kelvin, ambient;            /* K, Pa */
    double density, viscosity;         /* kg/m3, Pa.s */
    double modulus, modulus_slope;     /* Pa, 1 */
    double air, air_exponent, barus;   /* 1, 1, 1/Pa */
    double cavity, cavity_density, cavity_psi; /* Pa, 1, Pa */
    double psi_case;                   /* Pa */
} Oil;

typedef struct {
    int count;
    double sign;                       /* +1 pump, -1 motor */
    double area, pitch, mid, engaged;  /* m2, m, m3, m */
    double ring;                       /* m4 */
    double port, overlap, ramp, groove, groove_angle; /* m2, rad, rad, m2, rad */
    double face_drag, piston_drag, churn; /* m3, m3, N.m.s2 */
    double friction, thrust, breakaway, inertia; /* 1, 1, 1, kg.m2 */
    double full_angle;                 /* rad */
    double face_case, face_across;     /* m3 */
} Unit;

typedef struct {
    Oil oil;
    Unit pump, motor;
    double volume[3];                  /* m3 */
    double filter, orifice;            /* m3/(s.Pa), m3/s per m2 and Pa^1/2 */
    double check_area, check_crack, check_span; /* m2, Pa, Pa */
    double seat[2], least[2], reach[2];/* m2, 1, 1 */
    double relief[2], relief_slope;    /* Pa, m3/(s.Pa) */
    /* engine and belt */
    double engine_inertia, full_speed, droop, rated, peak, peak_share, other;
    double belt_ratio, belt_capacity, belt_creep;
    /* gears, wheels, machine */
    double ratio, efficiency, drag, radius, traction, stiffness, load_share, rolling, mass, weight;
    /* control and duty */
    double forward_share, play, neutral, swash_rate;
    double slope;                      /* rad */
    double corner_time[2], corner_stroke[2];
    double until;                      /* s */
} Drive;

/* What is compared: pA, pB, pG, pump torque, motor torque, motor speed, ground speed, make-up flow. */
enum { SEEN = 8 };

void drive_read(Drive *d, const char *path);
double law(const char *key);           /* value of a key in the file read, or ends the program */

void oil_set(Oil *o);
void oil_table(const Oil *o);          /* from now on oil_at looks up instead of computing */
void oil_at(const Oil *o, double p, double *density, double *slope, double *psi);

void unit_set(Unit *u, const char *name, double sign, const Oil *o);
double port_area(const Unit *u, double phi); /* phi in [-pi/2, 3 pi/2) */
double through(double gain, double drop);    /* orifice flow, m3/s */

/* Pressures' rates of one unit's chambers; adds to what the sides take in. Torque forward, sum of gauge pressures. */
void unit_flows(const Drive *d, const Unit *u, const double *p, const double *side, double theta, double omega, double tan_angle,
                double tan_rate, double *rate, double into[2], double *torque, double *load);

double loop_flows(const Drive *d, const double *p, double into[3]); /* returns make-up flow */

double dry_and_wet(const Drive *d, const Unit *u, double load, double tan_angle, double sine, double omega);
double engine_torque(const Drive *d, double omega);
double belt_torque(const Drive *d, double engine, double pump);
double ground_force(const Drive *d, double rim, double ground);
double rounded_sign(double omega);

void swash(const Drive *d, double t, double *angle, double *rate);

int drive_size(const Drive *d);
void drive_start(const Drive *d, double *y);
int drive_angle(const Drive *d, int i); /* 1 when y[i] is a shaft angle */
double drive_scale(const Drive *d, int i);
void drive_rates(const Drive *d, double t, const double *y, double *rate, double *seen);
#endif
