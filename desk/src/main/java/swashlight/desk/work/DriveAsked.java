package swashlight.desk.work;

import java.util.List;
import java.util.Optional;

/**
 * Which drive is asked about.
 *
 * @param source a file or the name of a demo drive; empty for the first demo drive
 * @param faults what is wrong with it, each {@code key=severity}
 */
public record DriveAsked(Optional<Stated> source, List<Stated> faults) {
    public DriveAsked {
        faults = List.copyOf(faults);
    }
}
