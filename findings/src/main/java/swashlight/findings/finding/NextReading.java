package swashlight.findings.finding;

import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/**
 * A reading worth taking.
 *
 * @param key stable name: {@code roll-back-hot}
 * @param words what to do, in plain words
 * @param kind what to read
 * @param setup under which conditions
 * @param gain expected information about the action, nat
 */
public record NextReading(String key, String words, ReadingKind kind, Setup setup, double gain) {}
