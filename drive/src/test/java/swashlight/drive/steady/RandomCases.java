package swashlight.drive.steady;

import java.util.List;
import java.util.Map;
import java.util.Random;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.fault.Fault;
import swashlight.drive.fault.Faults;
import swashlight.drive.oil.Oil;

/** Drives, faults and duties by lot, from a fixed seed. */
final class RandomCases {
    /** One drive (values in index order, SI) under one duty, and how it came about. */
    record Case(double[] vector, Duty duty, String story) {
        @Override
        public String toString() {
            return story + ", " + duty;
        }
    }

    private static final double[] TYPICAL =
            TypicalDrive.complete("by lot", true, Map.of()).vector();

    final Random random;

    RandomCases(long seed) {
        random = new Random(seed);
    }

    /** A typical drive, every number moved by its stated spread. */
    double[] drive() {
        double[] vector = TYPICAL.clone();
        for (Parameter parameter : Parameters.all()) {
            double spread = parameter.typicalSpread() * random.nextGaussian();
            double value = vector[parameter.index()];
            double moved = parameter.relativeSpread() ? value * Math.exp(spread) : value + spread;
            vector[parameter.index()] = Math.max(parameter.low(), Math.min(parameter.high(), moved));
        }
        return vector;
    }

    /**
     * An ordinary case: such a drive, in three of four with one single fault; engine running, off or shaft at a known forward speed; oil 0 …
     * 110 °C; slopes to 15°, pulls to 1.5 kN; now and then lifted, held, pushed or with the bypass open; at sea level.
     */
    Case ordinary() {
        double[] vector = drive();
        Duty duty = new Duty(
                input(1),
                stroke(),
                Oil.CELSIUS_ZERO + 110 * random.nextDouble(),
                wheels(0.26),
                0,
                random.nextInt(8) == 0 ? 1 : 0,
                Oil.ATMOSPHERE,
                random.nextInt(3) == 0);
        return random.nextInt(4) == 0 ? new Case(vector, duty, "healthy") : faulty(vector, duty);
    }

    /**
     * Anything a description may say and more: charge pump, reliefs, bleeds, lifting block by lot; input turned backwards; brake and bypass part
     * way; oil −30 … 150 °C; slopes to 30°; up to 4 km high.
     */
    Case unusual() {
        double[] vector = drive();
        if (random.nextInt(4) == 0) {
            set(vector, MakeUpParameter.CHARGE_DISPLACEMENT, 2e-6 * random.nextDouble());
            set(vector, MakeUpParameter.CHARGE_RELIEF, 2e5 + 1e6 * random.nextDouble());
        }
        if (random.nextInt(4) == 0) {
            set(vector, LoopParameter.RELIEF_A, 3e6 + 2e7 * random.nextDouble());
            set(vector, LoopParameter.RELIEF_B, 3e6 + 2e7 * random.nextDouble());
        }
        if (random.nextInt(4) == 0) {
            set(vector, LoopParameter.BLEED_A, 1e-3 * random.nextDouble());
            set(vector, LoopParameter.BLEED_B, 1e-3 * random.nextDouble());
        }
        if (random.nextInt(4) == 0) {
            set(vector, LoopParameter.BYPASS_LIFT, 1e-3 * random.nextDouble());
            set(vector, LoopParameter.BYPASS_AREA, 0);
        }
        Duty duty = new Duty(
                input(random.nextInt(4) == 0 ? -1 : 1),
                stroke(),
                Oil.CELSIUS_ZERO - 30 + 180 * random.nextDouble(),
                wheels(0.52),
                random.nextInt(4) == 0 ? random.nextDouble() : 0,
                random.nextInt(4) == 0 ? random.nextDouble() : 0,
                6e4 + 4e4 * random.nextDouble(),
                random.nextBoolean());
        return random.nextInt(4) == 0 ? new Case(vector, duty, "healthy") : faulty(vector, duty);
    }

    private Case faulty(double[] vector, Duty duty) {
        List<Fault> faults = Faults.all();
        Fault fault = faults.get(random.nextInt(faults.size()));
        double severity = fault.least() + (fault.most() - fault.least()) * random.nextDouble();
        fault.apply(vector, severity);
        return new Case(vector, fault.on(duty, severity), fault.key() + " at " + severity);
    }

    private InputState input(int turn) {
        return switch (random.nextInt(4)) {
            case 0 -> new InputState.Off();
            case 1 -> new InputState.Fixed(turn * 350 * random.nextDouble());
            default -> new InputState.Running(0.5 + 0.5 * random.nextDouble());
        };
    }

    private double stroke() {
        return random.nextInt(4) == 0 ? 0 : 2 * random.nextDouble() - 1;
    }

    private WheelState wheels(double steepest) {
        double slope = steepest * (2 * random.nextDouble() - 1);
        return switch (random.nextInt(8)) {
            case 0 -> new WheelState.Lifted();
            case 1 -> new WheelState.Held();
            case 2 -> new WheelState.Pushed(Math.max(-2, Math.min(2, 0.5 * random.nextGaussian())), slope);
            default -> new WheelState.Ground(slope, random.nextInt(3) == 0 ? 1500 * random.nextDouble() : 0);
        };
    }

    static void set(double[] vector, Parameter parameter, double value) {
        vector[parameter.index()] = value;
    }
}
