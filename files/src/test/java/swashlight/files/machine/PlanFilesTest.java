package swashlight.files.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionPlan;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.Timeline;
import swashlight.files.document.FileComplaint;
import swashlight.files.document.InputFault;
import swashlight.files.document.Source;

/** Duties over time in files: what stands there is what is done, and slips are told with their place. */
final class PlanFilesTest {
    @Test
    void whatChangesGoesThroughItsMoments() {
        PlanFile file = read("""
                kind: duty
                name: bank
                stroke: 20 %
                oilTemperature: 20 °C
                ambient: 15 °C
                over:
                  - {at: 0.5 s, stroke: 20 %, slope: 10 %}
                  - {at: 1 s, stroke: 100 %}
                  - {at: 2 s, slope: 0 deg, brake: 50 %}
                """);
        MotionPlan plan = file.plan();
        assertThat(file.name()).isEqualTo("bank");
        assertThat(plan.start()).isEqualTo(MotionStart.AT_REST);
        assertThat(plan.duration()).isEqualTo(4);
        assertThat(plan.duty().oilTemperature()).isEqualTo(293.15);
        assertThat(plan.duty().airTemperature()).isEqualTo(288.15);
        assertThat(plan.duty().stroke())
                .as("the value stated above counts from the beginning")
                .isEqualTo(Timeline.through(new double[] {0, 0.5, 1}, new double[] {0.2, 0.2, 1}));
        double grade = Math.atan(0.1);
        assertThat(plan.duty().slope())
                .as("none stated above: level before the first moment")
                .isEqualTo(Timeline.through(new double[] {0.5, 2}, new double[] {grade, 0}));
        assertThat(plan.duty().brake().at(0)).isEqualTo(0.5);
        assertThat(plan.duty().throttle()).isEqualTo(Timeline.constant(1));
    }

    @Test
    void aSettledDutyRunsOnAsItIs() {
        MotionPlan plan = read("stroke: 50 %\ndirection: reverse\nwheels: lifted\nlasts: 0.5 s\n")
                .plan();
        assertThat(plan.start()).isEqualTo(MotionStart.SETTLED);
        assertThat(plan.duration()).isEqualTo(0.5);
        assertThat(plan.duty().footing()).isEqualTo(MotionDuty.Footing.LIFTED);
        assertThat(plan.duty().stroke()).isEqualTo(Timeline.constant(-0.5));
    }

    @Test
    void aDirectionTurnsEveryStroke() {
        MotionPlan plan = read("direction: reverse\nover: [{at: 0 s, stroke: 0}, {at: 1 s, stroke: 80 %}]")
                .plan();
        assertThat(plan.duty().stroke().at(1)).isEqualTo(-0.8);
    }

    @Test
    void aPushedMachineIsPushed() {
        MotionPlan plan =
                read("engine: off\nbypass: 100 %\nover: [{at: 0 s, pushedSpeed: 0 m/s}, {at: 1 s, pushedSpeed: 2 km/h}]")
                        .plan();
        assertThat(plan.duty().footing()).isEqualTo(MotionDuty.Footing.PUSHED);
        assertThat(plan.duty().groundSpeed().at(1)).isEqualTo(2 / 3.6);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    over: [{at: 1 s, stroke: 1}, {at: 0.5 s, stroke: 0}]         | times-fall    | over[2].at
                    over: [{stroke: 1}]                                          | missing       | over[1].at
                    over: [{at: 1 s}]                                            | says-nothing  | over[1]
                    over: [{at: 1 s, speed: 3 m/s}]                              | unknown-key   | over[1].speed
                    over: [{at: 1, stroke: 1}]                                   | no-unit       | over[1].at
                    over: [{at: 1 s, stroke: 3}]                                 | out-of-range  | over[1].stroke
                    over: {at: 1 s, stroke: 1}                                   | not-a-list    | over
                    over: [3 s]                                                  | not-keys      | over[1]
                    {engine: off, over: [{at: 1 s, throttle: 0.5}]}              | contradiction | over
                    {wheels: held, over: [{at: 1 s, slope: 3 deg}]}              | contradiction | over
                    begins: soon                                                 | unknown-word  | begins
                    lasts: 2 h                                                   | out-of-range  | lasts
                    """)
    void slipsAreToldWithTheirPlace(String yaml, String key, String field) {
        List<FileComplaint> complaints =
                catchThrowableOfType(InputFault.class, () -> read(yaml)).complaints();
        assertThat(complaints).extracting(FileComplaint::key).contains(key);
        assertThat(complaints).extracting(FileComplaint::field).contains(field);
        assertThat(complaints).allSatisfy(complaint -> {
            assertThat(complaint.wrong()).isNotBlank();
            assertThat(complaint.right()).isNotBlank();
        });
    }

    /** Where one settled situation is wanted, a course is refused, and its other keys do no harm. */
    @Test
    void aCourseIsNoSettledSituation() {
        String course = "over: [{at: 1 s, stroke: 1}]";
        assertThat(catchThrowableOfType(InputFault.class, () -> DutyFiles.open(Source.of("duty.yaml", course)))
                        .complaints())
                .extracting(FileComplaint::key)
                .containsExactly("contradiction");
        assertThat(DutyFiles.open(Source.of("duty.yaml", "lasts: 2 s\nstroke: 50 %"))
                        .stroke())
                .isEqualTo(0.5);
    }

    private static PlanFile read(String yaml) {
        return DutyFiles.plan(Source.of("duty.yaml", yaml));
    }
}
