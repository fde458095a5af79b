package swashlight.drive.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Place;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionEvent;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.MotionWatcher;
import swashlight.drive.motion.MovingDrive;
import swashlight.drive.motion.PortZone;
import swashlight.drive.motion.Timeline;

/** Laws of traces, of chambers looked at, and of missing oil. */
final class RecorderTest {
    private static final Signal TIME = Signal.computed("time", Dimension.TIME, "time", MotionRun::time);

    @Test
    void rowsStandAtEvenTimes() {
        MotionRun run = Turning.at(300, 0.05);
        List<Signal> signals = new ArrayList<>(List.of(TIME));
        signals.addAll(Signal.all(MotionChannel.PRESSURE_A, MotionChannel.PUMP_ANGLE));
        Recorder recorder = new Recorder(run, signals, 1e-3);
        run.advance(0.1, recorder);
        Trace trace = recorder.trace();
        assertThat(trace.rows()).isEqualTo(101);
        double first = trace.value(0, 2);
        for (int row = 0; row < trace.rows(); row++) {
            assertThat(trace.time(row)).isCloseTo(row * 1e-3, within(1e-12));
            assertThat(trace.value(row, 0)).isCloseTo(row * 1e-3, within(1e-9));
            assertThat(trace.value(row, 2) - first).isCloseTo(300 * row * 1e-3, within(1e-6));
        }
        assertThat(trace.find("pressure_a")).hasValue(1);
        assertThat(trace.find("pressure_c")).isEmpty();
        assertThat(trace.column(1)).hasSize(101);
    }

    /** Closed form: R tan α cos φ around the middle, one pitch of 2π/N apart; volumes and positions say the same. */
    @Test
    void pistonsStandWhereTheShaftPutsThem() {
        MotionRun run = Turning.at(300, 0.05);
        run.advance(0.013);
        int count = run.chambers(Place.PUMP).count();
        double radius = Turning.DRIVE.value(new UnitParameter(Place.PUMP, UnitProperty.PITCH_RADIUS));
        double reach = radius * Math.tan(run.value(MotionChannel.SWASH_ANGLE));
        for (int k = 0; k < count; k++) {
            double phi = run.value(MotionChannel.PUMP_ANGLE) + 2 * Math.PI * k / count;
            assertThat(Signal.position(Place.PUMP, k).of(run)).isCloseTo(reach * Math.cos(phi), within(1e-6 * radius));
        }
    }

    /** Law: what the chambers take in through their ports is what their pistons make room for, but for leak and squeezing. */
    @Test
    void chambersTakeInWhatTheySweep() {
        MotionRun run = Turning.at(300, 0.02);
        List<Signal> flow = List.of(Signal.portFlow(Place.PUMP, 2), Signal.pressure(Place.PUMP, 2));
        CycleMeter meter = new CycleMeter(run, flow, Pace.PUMP_SHAFT, 2 * Math.PI);
        double[] in = {0, run.time()};
        run.advance(0.1, MotionWatcher.all(meter, at -> {
            in[0] += Math.max(0, flow.get(0).of(at)) * (at.time() - in[1]);
            in[1] = at.time();
        }));
        double bore = Turning.DRIVE.value(new UnitParameter(Place.PUMP, UnitProperty.PISTON_DIAMETER));
        double radius = Turning.DRIVE.value(new UnitParameter(Place.PUMP, UnitProperty.PITCH_RADIUS));
        double stroke = 2 * radius * Math.tan(run.value(MotionChannel.SWASH_ANGLE)); // m
        double swept = Math.PI * bore * bore / 4 * stroke * 300 / (2 * Math.PI) * 0.1; // m³ in all
        assertThat(in[0]).isCloseTo(swept, within(0.1 * swept));
        assertThat(meter.cycles().last(0, 4).mean())
                .as("nearly all of it goes out again, the rest leaks")
                .isCloseTo(0, within(0.02 * swept / 0.1));
    }

    /** Law: oil into side A goes on into the motor or leaks; and it is what the pistons sweep, V_g n, but for what is lost. */
    @Test
    void flowIntoSideAIsWhatThePistonsSweep() {
        MotionRun run = Turning.at(300, 0.05);
        run.advance(0.3);
        CycleMeter meter = new CycleMeter(
                run,
                Signal.all(MotionChannel.PUMP_FLOW, MotionChannel.MOTOR_FLOW, MotionChannel.CASE_LEAK),
                Pace.MOTOR_SHAFT,
                2 * Math.PI);
        run.advance(1.3, meter);
        double pump = meter.cycles().last(0, 100).mean(); // m³/s
        double motor = meter.cycles().last(1, 100).mean();
        double leak = meter.cycles().last(2, 100).mean();
        assertThat(pump - motor).isBetween(-0.001 * pump, leak + 0.001 * pump);
        double full = Turning.DRIVE.value(new UnitParameter(Place.PUMP, UnitProperty.FULL_SWASH_ANGLE));
        double share = Math.tan(run.value(MotionChannel.SWASH_ANGLE)) / Math.tan(full);
        double swept = Turning.DRIVE.value(new UnitParameter(Place.PUMP, UnitProperty.DISPLACEMENT))
                * share
                * 300
                / (2 * Math.PI);
        assertThat(pump).isBetween(0.96 * swept, 1.001 * swept);
    }

    /** Law: time without oil is that of the run's own events; without a make-up valve the chambers on the low side starve. */
    @Test
    void missingOilIsFoundWhereItIs() {
        Quantity none = new Quantity(0, 0, Origin.GIVEN);
        Quantity worn = new Quantity(40e-6, 0, Origin.GIVEN);
        MotionRun run = new MovingDrive(Turning.DRIVE.with(Map.of(
                        LoopParameter.CHECK_B_REACH,
                        none,
                        LoopParameter.BLEED_B,
                        none,
                        new UnitParameter(Place.MOTOR, UnitProperty.FACE_GAP),
                        worn)))
                .start(
                        MotionDuty.driving(Timeline.constant(1), 0.15, 353.15),
                        MotionStart.AT_REST,
                        MotionRun.USUAL_TOLERANCE);
        CavitationMeter meter = new CavitationMeter(run);
        run.advance(1.5, meter);
        double lasting = run.lasting(MotionEvent.Kind.CHAMBER_STARVES); // s
        assertThat(lasting).isGreaterThan(0.1);
        double sum = 0; // s
        double longest = 0; // s
        double first = Double.POSITIVE_INFINITY; // s
        for (Cavity cavity : meter.found()) {
            assertThat(cavity.place().key()).contains("chamber");
            assertThat(cavity.worst()).isBetween(0.0, 1.0);
            sum += cavity.lasting();
            longest = Math.max(longest, cavity.lasting());
            first = Math.min(first, cavity.first());
        }
        assertThat(lasting).isBetween(longest, sum);
        assertThat(first).isCloseTo(run.first(MotionEvent.Kind.CHAMBER_STARVES), within(1e-3));
        assertThat(meter.all().get(0).times()).as("side A is full").isZero();
        assertThat(meter.lasting(Place.PUMP, PortZone.SIDE_B))
                .as("the pump's chambers that suck from B lack oil, those that press into A hardly")
                .isGreaterThan(10 * meter.lasting(Place.PUMP, PortZone.SIDE_A));
    }
}
