/* Integrates the drive with CVODE (BDF, dense Jacobian by differences) and writes cycle means, ripple, times and steps.
 * usage: peer DESCRIPTION RESULTS law|table ROUNDS TOLERANCE[:ORDER[-]]...
 * Highest order 5 unless given. With orders above 2 CVODE's stability limit detection is on unless a minus follows the order: without it
 * the highest orders stay at steps of 0.1 us for ever at loose tolerances. */
#include "peer.h"
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <time.h>

enum { MOST_WINDOWS = 200, WITHIN = 4 }; /* looks within a step */
static const double WINDOW = 0.02;       /* s: a turn at 3000 rpm */

static Drive drive;
static double tolerance;
static int order, detecting;
static double sum[SEEN][MOST_WINDOWS], low[SEEN][MOST_WINDOWS], high[SEEN][MOST_WINDOWS];

static int rates(realtype t, N_Vector y, N_Vector rate, void *nothing) {
    (void)nothing;
    drive_rates(&drive, t, NV_DATA_S(y), NV_DATA_S(rate), NULL);
    for (int i = 0; i < drive_size(&drive); i++) {
        if (!isfinite(NV_Ith_S(rate, i))) return 1;
    }
    return 0;
}

/* Angles grow without end: only their absolute error counts. */
static int weights(N_Vector y, N_Vector w, void *nothing) {
    (void)nothing;
    for (int i = 0; i < drive_size(&drive); i++) {
        double size = drive_angle(&drive, i) ? 0 : fabs(NV_Ith_S(y, i));
        NV_Ith_S(w, i) = 1 / (tolerance * (size + drive_scale(&drive, i)));
    }
    return 0;
}

static void look(const double *before, const double *now, double t0, double t1) {
    for (double from = t0; from < t1;) {
        int w = (int)(from / WINDOW + 1e-9);
        double to = fmin(t1, (w + 1) * WINDOW);
        for (int i = 0; i < SEEN && w < MOST_WINDOWS; i++) {
            double slope = (now[i] - before[i]) / (t1 - t0);
            double a = before[i] + slope * (from - t0), b = before[i] + slope * (to - t0);
            sum[i][w] += (to - from) * (a + b) / 2;
            low[i][w] = fmin(low[i][w], fmin(a, b));
            high[i][w] = fmax(high[i][w], fmax(a, b));
        }
        if (to <= from) break;
        from = to;
    }
}

static double seconds(clockid_t clock) {
    struct timespec now;
    clock_gettime(clock, &now);
    return now.tv_sec + 1e-9 * now.tv_nsec;
}

static void demand(int flag, const char *what) {
    if (flag < 0) {
        fprintf(stderr, "CVODE: %s failed with %d\n", what, flag);
        exit(1);
    }
}

/* One run; looks at every step when asked. Adds wall and processor time, s. */
static void run(int looking, long *steps, long *evaluations, double *wall, double *busy) {
    SUNContext context;
    demand(SUNContext_Create(NULL, &context), "context");
    int n = drive_size(&drive);
    N_Vector y = N_VNew_Serial(n, context), inside = N_VNew_Serial(n, context), waste = N_VNew_Serial(n, context);
    drive_start(&drive, NV_DATA_S(y));
    double begun = seconds(CLOCK_MONOTONIC), begun_busy = seconds(CLOCK_THREAD_CPUTIME_ID);
    void *cvode = CVodeCreate(CV_BDF, context);
    demand(CVodeInit(cvode, rates, 0, y), "init");
    demand(CVodeWFtolerances(cvode, weights), "tolerances");
    SUNMatrix matrix = SUNDenseMatrix(n, n, context);
    SUNLinearSolver solver = SUNLinSol_Dense(y, matrix, context);
    demand(CVodeSetLinearSolver(cvode, solver, matrix), "linear solver");
    demand(CVodeSetMaxNumSteps(cvode, 100000000), "steps");
    demand(CVodeSetErrFile(cvode, NULL), "silence");
    demand(CVodeSetMaxOrd(cvode, order), "order");
    if (order > 2 && detecting) demand(CVodeSetStabLimDet(cvode, SUNTRUE), "stability limit");
    double before[SEEN], now[SEEN], last = 0, t = 0;
    drive_rates(&drive, 0, NV_DATA_S(y), NV_DATA_S(waste), before);
    double corners[3] = {drive.corner_time[0], drive.corner_time[1], drive.until};
    for (int c = 0; c < 3; c++) {
        if (corners[c] <= t) continue;
        if (t > 0) demand(CVodeReInit(cvode, t, y), "restart");
        demand(CVodeSetStopTime(cvode, corners[c]), "stop");
        while (t < corners[c]) {
            demand(CVode(cvode, corners[c], y, &t, looking ? CV_ONE_STEP : CV_NORMAL), "step");
            for (int i = 1; looking && i <= WITHIN; i++) {
                double at = last + (t - last) / (WITHIN - i + 1);
                demand(CVodeGetDky(cvode, at, 0, inside), "between");
                drive_rates(&drive, at, NV_DATA_S(inside), NV_DATA_S(waste), now);
                look(before, now, last, at);
                memcpy(before, now, sizeof now);
                last = at;
            }
        }
        long part, more;
        CVodeGetNumSteps(cvode, &part);
        CVodeGetNumRhsEvals(cvode, &more);
        *steps += part;
        *evaluations += more;
        CVodeGetNumLinRhsEvals(cvode, &more);
        *evaluations += more;
    }
    *wall = seconds(CLOCK_MONOTONIC) - begun;
    *busy = seconds(CLOCK_THREAD_CPUTIME_ID) - begun_busy;
    CVodeFree(&cvode);
    SUNLinSolFree(solver);
    SUNMatDestroy(matrix);
    N_VDestroy(y);
    N_VDestroy(inside);
    N_VDestroy(waste);
    SUNContext_Free(&context);
}

static int rising(const void *a, const void *b) {
    double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

int main(int count, char **word) {
    if (count < 6) {
        fprintf(stderr, "usage: peer DESCRIPTION RESULTS law|table ROUNDS TOLERANCE[:ORDER[-]]...\n");
        return 2;
    }
    drive_read(&drive, word[1]);
    int tabled = strcmp(word[3], "table") == 0;
    if (tabled) oil_table(&drive.oil);
    FILE *out = fopen(word[2], "w");
    int rounds = atoi(word[4]), windows = (int)(drive.until / WINDOW + 0.5);
    if (!out || rounds < 0 || rounds > 99 || windows > MOST_WINDOWS) return 2;
    for (int w = 5; w < count; w++) {
        tolerance = atof(word[w]);
        const char *colon = strchr(word[w], ':');
        order = colon ? atoi(colon + 1) : 5;
        detecting = !strchr(colon ? colon : "", '-');
        for (int i = 0; i < SEEN; i++) {
            for (int k = 0; k < MOST_WINDOWS; k++) {
                sum[i][k] = 0;
                low[i][k] = 1e300;
                high[i][k] = -1e300;
            }
        }
        long steps = 0, evaluations = 0, skip = 0;
        double wall[99], busy[99];
        run(1, &steps, &evaluations, wall, busy);
        for (int r = 0; r < rounds; r++) {
            long s = 0;
            run(0, &s, &skip, wall + r, busy + r);
        }
        qsort(wall, rounds ? rounds : 1, sizeof wall[0], rising);
        qsort(busy, rounds ? rounds : 1, sizeof busy[0], rising);
        fprintf(out, "CVODE-%s %s %.6g %.6g %ld %ld\n", word[3], word[w], wall[rounds / 2], busy[rounds / 2], steps, evaluations);
        for (int i = 0; i < SEEN; i++) {
            for (int k = 0; k < windows; k++) fprintf(out, "%.10g ", sum[i][k] / WINDOW);
            fprintf(out, "\n");
            for (int k = 0; k < windows; k++) fprintf(out, "%.10g ", high[i][k] - low[i][k]);
            fprintf(out, "\n");
        }
        fflush(out);
        fprintf(stderr, "CVODE (%s) %s: %ld steps, %.3f s, busy %.3f s\n", word[3], word[w], steps, wall[rounds / 2], busy[rounds / 2]);
    }
    return fclose(out);
}
