package swashlight.findings.finding;

import java.util.List;
import swashlight.findings.cause.Cause;

/**
 * One cause after the readings.
 *
 * @param cause what it is
 * @param prior probability before anything was read, 1
 * @param looks chance of what was seen and not seen, over the mean of all causes, 1
 * @param probability after readings and looks, 1
 * @param error standard error of the probability from chance in the computing, 1
 * @param severity of each fault that has one
 * @param effectiveSize of the machines drawn, 1
 * @param verdict on this cause alone
 */
public record CauseFinding(
        Cause cause,
        double prior,
        double looks,
        double probability,
        double error,
        List<SeverityRange> severity,
        double effectiveSize,
        Verdict verdict) {}
