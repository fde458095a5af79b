package swashlight.findings.wear;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a drive's own papers say of a part; never invented for a real one.
 *
 * @param statedLimit most wear its maker allows, SI unit of the part's kind
 * @param lapping whether it may be lapped
 * @param lapAtMost how much may be taken off, m
 * @param freshLength free length of a new spring, m
 * @param source where that is written
 */
public record PartFacts(
        OptionalDouble statedLimit,
        Optional<Boolean> lapping,
        OptionalDouble lapAtMost,
        OptionalDouble freshLength,
        String source) {
    /** Nothing known. */
    public static PartFacts none() {
        return new PartFacts(
                OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), "");
    }
}
