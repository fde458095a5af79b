package swashlight.findings.finding;

import java.util.List;

/**
 * What is still missing.
 *
 * @param unused readings that could not be used
 * @param conditions unstated ones that matter, worst first
 * @param readings not taken that would separate what is left, best first
 */
public record Missing(List<UnusedReading> unused, List<MissingCondition> conditions, List<NextReading> readings) {
    public Missing {
        unused = List.copyOf(unused);
        conditions = List.copyOf(conditions);
        readings = List.copyOf(readings);
    }
}
