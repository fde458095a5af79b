package swashlight.desk.work;

import java.util.Optional;

/**
 * A repair to be proved.
 *
 * @param before the case as it came in: file or demo; empty for the first demo
 * @param after the same machine read afterwards; empty to plan the readings
 * @param done work, kinds joined with a plus
 * @param seed of all chance
 */
public record ProofAsked(Optional<Stated> before, Optional<Stated> after, Optional<Stated> done, long seed) {}
