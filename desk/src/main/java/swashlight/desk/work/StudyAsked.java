package swashlight.desk.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * How large a study is to be.
 *
 * @param machines how many
 * @param seed of all chance
 * @param careful as carefully as a single case, or quickly
 * @param hands how many cores
 * @param to file for the rows
 * @param with files with rows of other studies, to be added up with these
 */
public record StudyAsked(Stated machines, long seed, boolean careful, int hands, Optional<Path> to, List<Path> with) {}
