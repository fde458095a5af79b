/**
 * Bench tables as CSV: case-drain tests, rig plateaus, and efficiency tables in the manner of ISO 4409.
 *
 * <p>Idea: a file is read whole, every fault in it is named with its line, and only then is anything computed; units end
 * here. Imports {@code findings} and commons-csv. Begin with {@link swashlight.files.bench.BenchTableFile}.
 */
package swashlight.files.bench;
