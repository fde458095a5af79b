package swashlight.findings.study;

import java.util.Map;
import java.util.OptionalInt;

/**
 * Wild readings of one machine, and the one that the finding distrusts.
 *
 * @param wild readings that went wild by their place, and by how many errors of the instrument, 1
 * @param named place of the reading that the finding calls likelier wild than not, if any
 */
public record Slips(Map<Integer, Double> wild, OptionalInt named) {
    public Slips {
        wild = Map.copyOf(wild);
    }
}
