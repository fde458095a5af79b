package swashlight.bench;

import java.util.Random;
import swashlight.drive.oil.Oil;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.files.drive.DriveFiles;

/**
 * The work of the steady benchmarks: the demo light rider under fixed ordinary duties by lot. Of all, 64 % drive forward and 20 % in reverse at
 * 20 … 100 % stroke and 60 … 100 % throttle, 8 % stand in neutral, 8 % roll with the engine off; slopes within ±15°, oil at one of eight
 * temperatures from 0 to 110 °C.
 */
final class RiderDuties {
    static final int COUNT = 4096;
    static final long SEED = 2026;
    private static final double[] WARMTH = {0, 10, 20, 40, 60, 80, 95, 110}; // °C
    private static final double STEEPEST = Math.toRadians(15);

    private RiderDuties() {}

    /** The drive's values in index order, SI. */
    static double[] drive() {
        return DriveFiles.demo("light-rider").vector();
    }

    static Duty[] all() {
        Random random = new Random(SEED);
        Duty[] duties = new Duty[COUNT];
        for (int i = 0; i < COUNT; i++) {
            duties[i] = next(random);
        }
        return duties;
    }

    private static Duty next(Random random) {
        double kind = random.nextDouble();
        double warmth = Oil.CELSIUS_ZERO + WARMTH[random.nextInt(WARMTH.length)];
        double slope = STEEPEST * (2 * random.nextDouble() - 1);
        if (kind < 0.08) {
            return Duty.rollDown(warmth, slope);
        }
        if (kind < 0.16) {
            return Duty.driving(0, warmth, slope);
        }
        double stroke = 0.2 + 0.8 * random.nextDouble();
        return Duty.driving(kind < 0.36 ? -stroke : stroke, warmth, slope)
                .with(new InputState.Running(0.6 + 0.4 * random.nextDouble()));
    }
}
