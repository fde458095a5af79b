package swashlight.findings.next;

import java.util.List;
import java.util.Optional;
import swashlight.findings.reading.Look;
import swashlight.findings.wear.WearPart;

/**
 * A step that is no numeric reading of the closed drive, judged by money: looking, or opening and measuring.
 *
 * @param key stable name
 * @param words what to do, in plain words
 * @param looks what would be noted that is not noted yet; none for an opened drive
 * @param part measured on the opened drive; empty for a look, and for everything in it
 * @param opens whether the drive is opened
 * @param time of one person, s
 * @param cost of that time and of what it uses up, 1 (currency)
 * @param saving expected fall of the total cost, 1 (currency)
 * @param gain expected information about what is to be done, nat; unit 1
 */
public record StepWorth(
        String key,
        String words,
        List<Look> looks,
        Optional<WearPart> part,
        boolean opens,
        double time,
        double cost,
        double saving,
        double gain) {
    public StepWorth {
        looks = List.copyOf(looks);
    }

    /** What remains of the saving, 1 (currency). */
    public double net() {
        return saving - cost;
    }
}
