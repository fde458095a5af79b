package swashlight.findings.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.evidence.Inference;
import swashlight.findings.evidence.InferenceOptions;
import swashlight.findings.evidence.Posterior;
import swashlight.findings.evidence.Unknowns;

/** Law: a crowd holds every cause by its probability. */
final class BeliefTest {
    @Test
    void everyCauseHasItsShareOfTheCrowd() {
        DriveDescription drive = TypicalDrive.complete("typical", true, Map.of());
        Posterior posterior = new Inference(InferenceOptions.quick(1)).weigh(drive, List.of(), Set.of(), Set.of());
        Belief belief = Belief.of(drive, new Unknowns(drive, List.of()), posterior, 1000, 1);
        assertThat(belief.size()).isEqualTo(1000);
        for (int h = 0; h < posterior.causes().size(); h++) {
            String key = posterior.causes().get(h).cause().key();
            long count = belief.suspects().stream()
                    .filter(each -> each.cause().key().equals(key))
                    .count();
            assertThat((double) count).isCloseTo(1000 * posterior.probability(h), within(1.0));
        }
    }
}
