package swashlight.findings.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.oil.Oil;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.LedgerItem;
import swashlight.drive.steady.SteadyAnswer;
import swashlight.drive.steady.SteadyDrive;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;

/** Leaks of single parts against closed forms and against what the settled drive's ledger books. */
class PartLeakTest {
    private static final double HOT = 353.15; // K

    private static DriveDescription worn() {
        Map<Parameter, Quantity> known = new HashMap<>();
        known.put(UnitParameter.pump(UnitProperty.BORE_CLEARANCE), Quantity.given(24e-6));
        known.put(UnitParameter.pump(UnitProperty.BAD_PISTON_CLEARANCE), Quantity.given(60e-6));
        known.put(UnitParameter.pump(UnitProperty.FACE_GAP), Quantity.given(21e-6));
        known.put(UnitParameter.pump(UnitProperty.CASE_SCORE_DEPTH), Quantity.given(50e-6));
        known.put(UnitParameter.pump(UnitProperty.BRIDGE_SCORE_DEPTH), Quantity.given(70e-6));
        known.put(UnitParameter.motor(UnitProperty.FACE_GAP), Quantity.given(19e-6));
        known.put(UnitParameter.motor(UnitProperty.CASE_SCORE_DEPTH), Quantity.given(30e-6));
        known.put(LoopParameter.CHECK_A_LEAK, Quantity.given(3e-7));
        return TypicalDrive.complete("worn", true, known);
    }

    /**
     * At the pressure a climb settles to, each part leaks what the ledger books for it. The pump's swash gives way a little under load, and the
     * gallery is some kPa below the case.
     */
    @Test
    void leaksAreThoseOfTheLedger() {
        DriveDescription drive = worn();
        SteadyAnswer answer = new SteadyDrive(drive).answer(Duty.driving(1, HOT, Math.toRadians(10)));
        assertThat(answer).isInstanceOf(SteadyAnswer.Converged.class);
        SteadyPoint point = answer.point();
        PartLeak leak = new PartLeak(point.pressureA() - Oil.ATMOSPHERE, HOT);
        double[] vector = drive.vector();
        check(leak, vector, "pump-piston-play", -point.intoA(LedgerItem.PUMP_PISTONS), 1e-3);
        check(leak, vector, "pump-worst-piston", -point.intoA(LedgerItem.PUMP_BAD_PISTON), 1e-3);
        check(leak, vector, "pump-flatness", -point.intoA(LedgerItem.PUMP_FACE), 1e-9);
        check(leak, vector, "pump-face-score", -point.intoA(LedgerItem.PUMP_SCORES), 1e-9);
        check(leak, vector, "motor-piston-play", -point.intoA(LedgerItem.MOTOR_PISTONS), 1e-9);
        check(leak, vector, "motor-flatness", -point.intoA(LedgerItem.MOTOR_FACE), 1e-9);
        check(leak, vector, "motor-face-score", -point.intoA(LedgerItem.MOTOR_SCORES), 1e-9);
        check(leak, vector, "pump-bridge-score", -point.intoA(LedgerItem.PUMP_BRIDGE_SCORE), 0.01); // to side B
        check(leak, vector, "make-up-valve-a", -point.intoA(LedgerItem.CHECK_A), 0.01); // to the gallery
    }

    private static void check(PartLeak leak, double[] vector, String key, double booked, double tolerance) {
        assertThat(booked).as(key).isPositive();
        assertThat(leak.of(WearPart.find(key).orElseThrow(), vector) / booked)
                .as(key)
                .isCloseTo(1, within(tolerance));
    }

    /** Closed forms written out, for an oil whose viscosity does not depend on pressure; Merritt 1967 ch. 3 (from memory). */
    @Test
    void leaksAreThoseOfTheGapLaws() {
        DriveDescription drive = worn().with(OilParameter.PRESSURE_VISCOSITY, Quantity.given(0));
        double[] vector = drive.vector();
        double pressure = 80e5;
        double mu = SteadySolver.oilOf(vector).at(HOT).dynamicViscosity();
        PartLeak leak = new PartLeak(pressure, HOT);
        double d = pump(vector, UnitProperty.PISTON_DIAMETER);
        double e = pump(vector, UnitProperty.BORE_ECCENTRICITY);
        double half = pump(vector, UnitProperty.PITCH_RADIUS) * Math.tan(pump(vector, UnitProperty.FULL_SWASH_ANGLE));
        double length = Math.sqrt(Math.pow(pump(vector, UnitProperty.ENGAGED_LENGTH), 2) - half * half);
        double pistons = pump(vector, UnitProperty.PISTON_COUNT)
                / 2
                * Math.PI
                * d
                * Math.pow(24e-6, 3)
                * (1 + 1.5 * e * e)
                * pressure
                / (12 * mu * length);
        assertThat(leak.of(WearPart.find("pump-piston-play").orElseThrow(), vector) / pistons)
                .isCloseTo(1, within(1e-12));
        double radial = pump(vector, UnitProperty.KIDNEY_SPAN)
                * Math.pow(21e-6, 3)
                / (12 * mu)
                * (1 / Math.log(pump(vector, UnitProperty.KIDNEY_INNER) / pump(vector, UnitProperty.LAND_INNER))
                        + 1 / Math.log(pump(vector, UnitProperty.LAND_OUTER) / pump(vector, UnitProperty.KIDNEY_OUTER)))
                * pressure;
        assertThat(leak.of(WearPart.find("pump-flatness").orElseThrow(), vector) / radial)
                .isCloseTo(1, within(1e-12));
        double land = (pump(vector, UnitProperty.KIDNEY_INNER)
                        - pump(vector, UnitProperty.LAND_INNER)
                        + pump(vector, UnitProperty.LAND_OUTER)
                        - pump(vector, UnitProperty.KIDNEY_OUTER))
                / 2;
        double thin = 3e-3 * Math.pow(50e-6, 3) * pressure / (12 * mu * land);
        assertThat(leak.of(WearPart.find("pump-face-score").orElseThrow(), vector) / thin)
                .isCloseTo(1 - 0.63 * 50e-6 / 3e-3, within(1e-3)); // φ = 1 − 0.630 s/b + …, White (from memory)
    }

    /** Twice the play, eight times the leak; a notch leaks a quarter of a flat-bottomed score as wide and deep, which k = 0.63 says. */
    @Test
    void cubesOfPlayAndDepth() {
        DriveDescription drive = TypicalDrive.complete("any", true, Map.of());
        PartLeak leak = new PartLeak(70e5, HOT);
        WearPart play = WearPart.find("motor-piston-play").orElseThrow();
        assertThat(leakOf(leak, drive, play, 60e-6, 1) / leakOf(leak, drive, play, 30e-6, 1))
                .isCloseTo(8, within(1e-9));
        WearPart score = WearPart.find("motor-face-score").orElseThrow();
        double notch = Math.pow(0.25, 1.0 / 3);
        assertThat(leakOf(leak, drive, score, 40e-6, notch) / leakOf(leak, drive, score, 40e-6, 1))
                .isCloseTo(0.25, within(2e-3));
    }

    /** Merritt's sharp hole: 0.65 of the area at √(2Δp/ρ); what a seat test showed comes back as the area. */
    @Test
    void aSeatTestIsAHole() {
        double[] vector = TypicalDrive.complete("any", true, Map.of()).vector();
        WearPart valve = WearPart.find("make-up-valve-b").orElseThrow();
        double shown = 0.65 * 1e-7 * Math.sqrt(2 * 1e5 / 800); // m³/s
        valve.wear(vector, shown, 1);
        assertThat(vector[LoopParameter.CHECK_B_LEAK.index()]).isCloseTo(1e-7, within(2e-9)); // smoothed near 20 kPa
        assertThat(valve.fresh(vector)).isCloseTo(shown, within(1e-3 * shown));
    }

    @Test
    void everyPartMovesWhatItSays() {
        DriveDescription drive = TypicalDrive.complete("any", true, Map.of());
        for (WearPart part : WearPart.all()) {
            if (part.kind() == WearKind.SPRING) {
                continue;
            }
            double[] vector = drive.vector();
            double fresh = part.fresh(vector);
            part.wear(vector, fresh + (part.kind() == WearKind.SEAT_LEAK ? 1e-6 : 40e-6), 1);
            List<Integer> changed = new java.util.ArrayList<>();
            double[] before = drive.vector();
            for (int i = 0; i < before.length; i++) {
                if (vector[i] != before[i]) {
                    changed.add(i);
                }
            }
            assertThat(changed).as(part.key()).containsExactly(part.moved().index());
            assertThat(part.key())
                    .startsWith(part.place().isPresent() ? part.moved().section() : "make-up");
        }
    }

    private static double leakOf(PartLeak leak, DriveDescription drive, WearPart part, double wear, double form) {
        double[] vector = drive.vector();
        part.wear(vector, wear, form);
        return leak.of(part, vector);
    }

    private static double pump(double[] vector, UnitProperty property) {
        return vector[UnitParameter.pump(property).index()];
    }
}
