/**
 * How fast Swashlight is, and how it compares: each class asks one question and measures a peer in the same run, error beside time.
 *
 * <p>Idea: JMH classes named by their question, and {@link swashlight.bench.Measure}, which runs them all on every Java given and writes the
 * table. Imports whatever it measures. Begin with {@code bench/run}; not part of the ordinary tests.
 */
package swashlight.bench;
