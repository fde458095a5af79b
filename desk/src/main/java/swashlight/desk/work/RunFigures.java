package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Curve;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Value;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.trace.Cycles;
import swashlight.drive.trace.OrderSpectrum;
import swashlight.drive.trace.Trace;

/** A run as pictures: pressures and speed over time as means of piston passes, the last moments in full, and the orders. */
final class RunFigures {
    private static final double HIGHEST_ORDER = 40; // drawn
    private static final int SOUND_HUE = 2; // after those of the drive itself

    private final SickDrive drive;
    private final PlanShelf plan;
    private final MovingResult sick;
    private final Optional<MovingResult> sound;
    private final double ambient; // Pa

    RunFigures(SickDrive drive, PlanShelf plan, MovingResult sick, Optional<MovingResult> sound) {
        this.drive = drive;
        this.plan = plan;
        this.sick = sick;
        this.sound = sound;
        ambient = plan.plan().duty().ambientPressure();
    }

    List<Figure> all() {
        List<Figure> figures = new ArrayList<>();
        if (sick.cycles().count() > 1) {
            figures.add(overTime(
                    Value.word("picture.run", Value.text(drive.sound().name()), Value.text(plan.name())),
                    new Axis(Value.word("axis.gauge"), Measure.PRESSURE),
                    ambient,
                    MotionChannel.PRESSURE_A,
                    MotionChannel.PRESSURE_B));
            figures.add(overTime(
                    Value.word("picture.run.speed"),
                    new Axis(Value.word("shown.speed"), Measure.SPEED),
                    0,
                    MotionChannel.GROUND_SPEED));
        }
        figures.add(zoom());
        sick.orders().ifPresent(orders -> figures.add(orders(orders)));
        return figures;
    }

    private Figure overTime(Value title, Axis up, double origin, MotionChannel... channels) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < channels.length; i++) {
            curves.add(curve(sick, channels[i], RunReport.word(channels[i]), i, 0, origin));
        }
        for (int i = 0; i < channels.length && sound.isPresent(); i++) {
            Value name = Value.word("picture.sound", RunReport.word(channels[i]));
            curves.add(curve(sound.get(), channels[i], name, i + SOUND_HUE, 1, origin));
        }
        return new Figure.Curves(title, time(), up, curves);
    }

    private static Axis time() {
        return new Axis(Value.word("column.time"), Measure.TIME);
    }

    /** Means at the middle of each cycle. */
    private static Curve curve(
            MovingResult result, MotionChannel channel, Value name, int hue, int stroke, double origin) {
        Cycles cycles = result.cycles();
        double[] ends = cycles.ends();
        double[] middles = new double[ends.length];
        double[] means = cycles.means(MovingResult.SUMMED.indexOf(channel));
        for (int c = 0; c < ends.length; c++) {
            middles[c] = (cycles.begin(c) + ends[c]) / 2;
            means[c] -= origin;
        }
        return new Curve(name, hue, stroke, middles, means);
    }

    private Figure zoom() {
        Trace trace = sick.zoom;
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            double[] values = trace.column(i);
            for (int row = 0; row < values.length; row++) {
                values[row] -= ambient;
            }
            MotionChannel channel = i == 0 ? MotionChannel.PRESSURE_A : MotionChannel.PRESSURE_B;
            curves.add(new Curve(RunReport.word(channel), i, 0, trace.times(), values));
        }
        return new Figure.Curves(
                Value.word("picture.run.zoom"), time(), new Axis(Value.word("axis.gauge"), Measure.PRESSURE), curves);
    }

    private Figure orders(OrderSpectrum spectrum) {
        List<Curve> curves = new ArrayList<>();
        curves.add(tones(spectrum, Value.word("picture.asked"), 0));
        sound.flatMap(MovingResult::orders)
                .ifPresent(healthy -> curves.add(tones(healthy, Value.word("picture.sound.alone"), SOUND_HUE)));
        return new Figure.Curves(
                Value.word("picture.run.orders"),
                new Axis(Value.word("axis.order"), Measure.RATIO),
                new Axis(Value.word("axis.amplitude"), Measure.PRESSURE),
                curves);
    }

    private static Curve tones(OrderSpectrum spectrum, Value name, int hue) {
        double[] amplitudes = spectrum.amplitudes(0);
        int first = (int) Math.ceil(0.5 / spectrum.step());
        int last = (int) Math.min(amplitudes.length - 1, HIGHEST_ORDER / spectrum.step());
        double[] orders = new double[last - first + 1];
        double[] ys = new double[orders.length];
        for (int i = 0; i < orders.length; i++) {
            orders[i] = (first + i) * spectrum.step();
            ys[i] = amplitudes[first + i];
        }
        return new Curve(name, hue, hue == 0 ? 0 : 1, orders, ys);
    }
}
