package swashlight.drive.fault;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The list of single faults. Ranges and usual severities: own estimates, no source; a score counts as 3 mm wide. A broken spring and a
 * stuck piston look alike in a settled drive: the piston does not stroke.
 */
public final class Faults {
    private static final List<Fault> ALL = Stream.of(
                    BlockFaults.ALL, LoopFaults.ALL, ControlFaults.ALL, OilFaults.ALL, TrainFaults.ALL, UseFaults.ALL)
            .flatMap(List::stream)
            .toList();

    private Faults() {}

    /** All single faults, in the order of the drive from block to use. */
    public static List<Fault> all() {
        return ALL;
    }

    /** The fault with a key such as {@code pump-face-worn}. */
    public static Optional<Fault> find(String key) {
        return ALL.stream().filter(fault -> fault.key().equals(key)).findFirst();
    }
}
