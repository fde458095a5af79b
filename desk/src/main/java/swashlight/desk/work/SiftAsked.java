package swashlight.desk.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Which cases to go through.
 *
 * @param places folders, files, demos; none: all demos
 * @param seed of all chance
 * @param careful as carefully as a single case, or quickly
 * @param hands how many cores
 * @param to file for the rows
 */
public record SiftAsked(List<Stated> places, long seed, boolean careful, int hands, Optional<Path> to) {
    public SiftAsked {
        places = List.copyOf(places);
    }
}
