package swashlight.drive.motion;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import swashlight.drive.description.Dimension;

/**
 * Where a run may begin: side pressures, angles and speeds, each in the SI unit of its channel. Chambers take the pressure of the side they
 * are open to.
 *
 * <p>A run's own state may be taken up by another drive: a fault that comes while it moves.
 */
public final class MotionState {
    /** The channels that make a state. */
    public static final Set<MotionChannel> CHANNELS = EnumSet.of(
            MotionChannel.PRESSURE_A,
            MotionChannel.PRESSURE_B,
            MotionChannel.GALLERY_PRESSURE,
            MotionChannel.SWASH_ANGLE,
            MotionChannel.PUMP_ANGLE,
            MotionChannel.MOTOR_ANGLE,
            MotionChannel.ENGINE_SPEED,
            MotionChannel.PUMP_SPEED,
            MotionChannel.MOTOR_SPEED,
            MotionChannel.GROUND_SPEED);

    private final Map<MotionChannel, Double> values;

    private MotionState(Map<MotionChannel, Double> values) {
        this.values = values;
    }

    /** Everything stands, plate in neutral, at one absolute pressure (Pa). */
    public static MotionState standing(double pressure) {
        Map<MotionChannel, Double> values = new EnumMap<>(MotionChannel.class);
        for (MotionChannel channel : CHANNELS) {
            values.put(channel, 0.0);
        }
        return new MotionState(values)
                .with(MotionChannel.PRESSURE_A, pressure)
                .with(MotionChannel.PRESSURE_B, pressure)
                .with(MotionChannel.GALLERY_PRESSURE, pressure);
    }

    /** Where a run is now. */
    public static MotionState of(MotionRun run) {
        Map<MotionChannel, Double> values = new EnumMap<>(MotionChannel.class);
        for (MotionChannel channel : CHANNELS) {
            values.put(channel, run.value(channel));
        }
        return new MotionState(values);
    }

    /**
     * A copy with another value.
     *
     * @param value SI unit of the channel
     * @throws IllegalArgumentException when the channel is no part of a state, or a pressure is not positive
     */
    public MotionState with(MotionChannel channel, double value) {
        boolean pressure = channel.dimension() == Dimension.PRESSURE;
        if (!CHANNELS.contains(channel) || !(Math.abs(value) < 1e9) || (pressure && !(value > 0))) {
            throw new IllegalArgumentException(channel + " " + value + " is no part of a state");
        }
        Map<MotionChannel, Double> other = new EnumMap<>(values);
        other.put(channel, value);
        return new MotionState(other);
    }

    /** Value of a channel, SI unit of the channel. */
    public double value(MotionChannel channel) {
        return values.get(channel);
    }
}
