package swashlight.findings.finding;

import java.util.List;
import swashlight.findings.expect.Condition;
import swashlight.findings.reading.Reading;

/**
 * One reading beside what each leading cause predicts.
 *
 * @param reading as measured
 * @param implied true when it was taken from the conditions of another reading
 * @param conditions stated, and usual where nothing was stated
 * @param predictions by cause, likeliest first
 */
public record ReadingFinding(
        Reading reading, boolean implied, List<Condition> conditions, List<Prediction> predictions) {
    public ReadingFinding {
        conditions = List.copyOf(conditions);
        predictions = List.copyOf(predictions);
    }
}
