package swashlight.desk.work;

import java.util.Optional;

/**
 * What a decision on a case stands on besides the case.
 *
 * @param machineCase file or demo; empty for the first demo
 * @param seed of all chance
 * @param counted a file of counted cases
 * @param prices a file of prices; empty for invented ones
 * @param hill slope of the customer's hill
 * @param load drawbar pull there
 * @param share of a sound drive's speed that must be reached there
 * @param have tools at hand, separated by commas
 */
public record DecisionAsked(
        Optional<Stated> machineCase,
        long seed,
        Optional<Stated> counted,
        Optional<Stated> prices,
        Optional<Stated> hill,
        Optional<Stated> load,
        Optional<Stated> share,
        Optional<Stated> have) {}
