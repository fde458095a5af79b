package swashlight.findings.wear;

/**
 * One row of a limit table.
 *
 * @param part which
 * @param fresh what a gauge shows on new ones (nine in ten within), SI unit of the part's kind
 * @param alone limit with every other part new
 * @param alike limit when all parts that decide use the same share of their own room
 * @param leakFresh of a new one, m³/s
 * @param leak at the limit alone, m³/s
 * @param leakShare of the full delivery, at the limit alone, 1
 * @param shared share of its own room that each part may use when all wear alike, 1
 */
public record PartLimit(
        WearPart part,
        Span fresh,
        Limit alone,
        Span alike,
        double leakFresh,
        double leak,
        double leakShare,
        Span shared) {}
