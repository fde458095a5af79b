/* Reads key=value lines, SI, and makes a drive of them. */
#include "peer.h"
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static char keys[400][64];
static double values[400];
static int known;

double law(const char *key) {
    for (int i = 0; i < known; i++) {
        if (strcmp(keys[i], key) == 0) return values[i];
    }
    fprintf(stderr, "the description lacks %s\n", key);
    exit(2);
}

/* The peer knows no faults: it would rather stop than leave one out. */
static void absent(const char *key) {
    if (law(key) != 0) {
        fprintf(stderr, "the peer does not compute %s\n", key);
        exit(2);
    }
}

static void sound(const char *unit) {
    const char *none[] = {"idlePistons", "badPistonClearance", "caseScoreDepth", "sideAScoreDepth", "sideBScoreDepth", "bridgeScoreDepth",
                          "shoeOrifice"};
    for (int i = 0; i < 7; i++) {
        char key[64];
        snprintf(key, sizeof key, "%s.%s", unit, none[i]);
        absent(key);
    }
}

void drive_read(Drive *d, const char *path) {
    FILE *f = fopen(path, "r");
    if (!f) {
        perror(path);
        exit(2);
    }
    while (known < 400 && fscanf(f, " %63[^=]=%lf", keys[known], &values[known]) == 2) known++;
    fclose(f);
    sound("pump");
    sound("motor");
    absent("loop.crackA");
    absent("loop.crackB");
    absent("loop.crackAB");
    absent("loop.bypassRest");
    absent("makeUp.chargeDisplacement");
    d->oil.kelvin = law("duty.oilTemperature");
    d->oil.ambient = law("duty.ambientPressure");
    oil_set(&d->oil);
    unit_set(&d->pump, "pump", 1, &d->oil);
    unit_set(&d->motor, "motor", -1, &d->oil);
    d->volume[A] = law("loop.volumeA");
    d->volume[B] = law("loop.volumeB");
    d->volume[G] = law("makeUp.galleryVolume");
    d->filter = (1 - law("makeUp.uncoveredShare")) /
                (law("makeUp.filterResistance") * law("makeUp.filterClogging") * d->oil.viscosity);
    d->orifice = 0.65 * sqrt(2 / d->oil.density);
    d->check_area = law("loop.checkArea");
    d->check_crack = law("loop.checkCrack");
    d->check_span = law("loop.checkSpan");
    double bleed_a = law("loop.bleedA"), bleed_b = law("loop.bleedB");
    d->seat[A] = law("loop.checkALeak") + M_PI / 4 * bleed_a * bleed_a;
    d->seat[B] = law("loop.checkBLeak") + M_PI / 4 * bleed_b * bleed_b;
    d->least[A] = law("loop.checkALift");
    d->least[B] = law("loop.checkBLift");
    d->reach[A] = law("loop.checkAReach");
    d->reach[B] = law("loop.checkBReach");
    d->relief[A] = law("loop.reliefA");
    d->relief[B] = law("loop.reliefB");
    d->relief_slope = law("loop.reliefSlope");
    d->engine_inertia = law("engine.inertia");
    d->full_speed = law("engine.noLoadSpeed");
    d->droop = law("engine.droop");
    d->rated = law("engine.strength") * law("engine.ratedTorque");
    d->peak = fmax(1.001 * d->rated, law("engine.strength") * law("engine.peakTorque"));
    d->peak_share = law("engine.peakSpeedShare");
    d->other = law("engine.otherTorque");
    d->belt_ratio = law("belt.speedRatio");
    d->belt_capacity = law("belt.capacity");
    d->belt_creep = law("belt.creep");
    d->ratio = law("gears.ratio");
    d->efficiency = law("gears.meshEfficiency") * (1 - law("gears.toothLoss"));
    d->drag = law("gears.dragTorque") + law("brake.dragTorque");
    d->radius = law("wheels.rollingRadius");
    d->traction = law("wheels.traction");
    d->stiffness = law("wheels.tractionStiffness");
    d->load_share = law("wheels.loadShare");
    d->rolling = law("wheels.rollingResistance");
    d->weight = law("machine.mass") * 9.80665;
    d->mass = law("machine.mass") * (1 + law("machine.rotatingShare"));
    d->forward_share = law("control.forwardShare");
    d->play = law("control.play");
    d->neutral = law("control.neutralOffset");
    d->swash_rate = law("control.swashRate");
    d->slope = law("duty.slope");
    d->until = law("duty.until");
    d->corner_time[0] = law("duty.strokeTime0");
    d->corner_time[1] = law("duty.strokeTime1");
    d->corner_stroke[0] = law("duty.stroke0");
    d->corner_stroke[1] = law("duty.stroke1");
}
