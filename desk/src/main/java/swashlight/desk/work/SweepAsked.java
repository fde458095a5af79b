package swashlight.desk.work;

import java.util.Optional;

/**
 * One condition going from one value to another, in the words of whoever asks.
 *
 * @param condition its name
 * @param from first value; empty for the usual one
 * @param to last value; empty for the usual one
 * @param steps how many values
 */
public record SweepAsked(Stated condition, Optional<Stated> from, Optional<Stated> to, int steps) {}
