package swashlight.findings.wear;

import java.util.List;
import java.util.Map;

/**
 * What the maker's papers of a drive say about its parts and screws: the user's own data, with their source; nothing where nobody stated it.
 *
 * @param parts limits and lapping, by part
 * @param torques in the order of assembly
 */
public record DrivePapers(Map<WearPart, PartFacts> parts, List<Torque> torques) {
    public DrivePapers {
        parts = Map.copyOf(parts);
        torques = List.copyOf(torques);
    }

    /** Nothing known. */
    public static DrivePapers none() {
        return new DrivePapers(Map.of(), List.of());
    }

    /** What they say of a part. */
    public PartFacts of(WearPart part) {
        return parts.getOrDefault(part, PartFacts.none());
    }

    /**
     * How tight a screw goes.
     *
     * @param screw which
     * @param torque N·m
     * @param order of tightening; may be empty
     * @param source where that is written
     */
    public record Torque(String screw, double torque, String order, String source) {}
}
