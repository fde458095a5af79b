package swashlight.findings.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.evidence.CauseMachine;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;

/** The chart on machines with one plain fault, read without error: what a trade school would answer (common practice, no source). */
final class FixedChartTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("typical", true, Map.of());

    @Test
    void aSoundMachineIsLeftAlone() {
        assertThat(work("healthy", 0, Visit.SPEEDS)).isEqualTo("leave-alone");
    }

    @Test
    void whatIsOutsideIsFoundFirst() {
        assertThat(work("belt-worn", 0.98, Visit.SPEEDS)).isEqualTo("renew-belt");
        assertThat(work("forward-travel-short", 0.98, Visit.ROLLS)).isEqualTo("adjust-control");
        assertThat(work("brake-drags", 0.98, Visit.ROLLS)).isEqualTo("free-brake");
    }

    @Test
    void aDriveThatLeaksIsExchanged() {
        assertThat(work("motor-face-worn", 0.98, Visit.ROLLS)).isEqualTo("exchange-drive");
        assertThat(work("motor-face-worn", 0.98, Visit.RUNS)).isEqualTo("exchange-drive");
    }

    @Test
    void aLookEndsItEarlier() {
        assertThat(work("motor-face-worn", 0.98, Visit.ROLLS, Look.OIL_MILKY)).isEqualTo("change-oil");
        assertThat(work("motor-face-worn", 0.98, Visit.ROLLS, Look.BELT_GLAZED)).isEqualTo("renew-belt");
    }

    /** The chart's work on a machine whose fault is as bad as a share of its prior stays below. */
    private static String work(String key, double share, Visit visit, Look... seen) {
        Cause cause = Causes.find(key).orElseThrow();
        double[] severity = cause.parts().stream()
                .mapToDouble(part -> part.severity().severity(share))
                .toArray();
        List<Reading> asked = visit.asked();
        Rehearsal rehearsal = new Rehearsal(asked.stream().map(Comparison::of).toList());
        Unknowns unknowns = new Unknowns(DRIVE, rehearsal.errors());
        Forecast forecast = new Forecast(asked.size());
        new CauseMachine(cause, unknowns, rehearsal).predict(severity, new double[unknowns.size()], forecast);
        List<Reading> read = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            Reading one = asked.get(i);
            read.add(new Reading(one.label(), one.kind(), forecast.value(i), OptionalDouble.empty(), one.setup()));
        }
        Set<Look> looks = EnumSet.noneOf(Look.class);
        looks.addAll(List.of(seen));
        return FixedChart.work(new MachineCase("x", true, "", DRIVE, read, looks, Set.of()))
                .key();
    }
}
