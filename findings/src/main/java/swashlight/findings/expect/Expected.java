package swashlight.findings.expect;

/** What a reading would be. */
public sealed interface Expected {
    /** A number: value in the SI unit of the reading’s kind (of the part, for a part dimension). */
    record Value(double value) implements Expected {}

    /** The machine stands or goes the other way: the time asked for never ends. */
    record Stands() implements Expected {}

    /** No settled state was found. */
    record NotSolved(String advice) implements Expected {}

    /** A condition is missing without which there is no number. */
    record NotAsked(String missing) implements Expected {}
}
