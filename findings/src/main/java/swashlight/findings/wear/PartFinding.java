package swashlight.findings.wear;

/**
 * What one measured part comes to.
 *
 * @param measured as read
 * @param fresh what a gauge shows on new ones (nine in ten within), SI unit of the part's kind
 * @param worn what it really is (nine in ten within), SI unit of the part's kind
 * @param leak at the stated pressure, m³/s
 * @param leakFresh of a new one there, m³/s
 * @param leakShare of the full delivery, 1
 * @param cost performance lost with only this part worn, share of what is required, 1; at the requirement it costs most
 * @param dearest place of that requirement
 * @param alone limit with every other part new
 * @param together limit with every other part as measured
 * @param reachesAlone share of the machines that reach what is required with only this part worn, 1
 * @param verdict reuse, replace or cannot tell
 */
public record PartFinding(
        Measured measured,
        Span fresh,
        Span worn,
        Span leak,
        double leakFresh,
        double leakShare,
        Span cost,
        int dearest,
        Limit alone,
        Limit together,
        double reachesAlone,
        PartVerdict verdict) {}
