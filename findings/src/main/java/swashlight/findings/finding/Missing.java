package swashlight.findings.finding;

import java.util.List;

/**
 * What is still missing.
 *
 * @param unused readings that could not be used
 * @param conditions unstated ones that matter, worst first
 */
public record Missing(List<UnusedReading> unused, List<MissingCondition> conditions) {
    public Missing {
        unused = List.copyOf(unused);
        conditions = List.copyOf(conditions);
    }
}
