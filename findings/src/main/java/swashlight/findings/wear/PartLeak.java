package swashlight.findings.wear;

import swashlight.drive.description.InputParameter;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.gap.AnnularGap;
import swashlight.drive.gap.FaceGap;
import swashlight.drive.gap.Orifice;
import swashlight.drive.gap.Score;
import swashlight.drive.oil.Oil;
import swashlight.drive.oil.OilAt;
import swashlight.drive.steady.SteadySolver;

/**
 * What one part leaks at a stated pressure of one side over the case, by the gap laws alone, full stroke.
 *
 * <pre>
 *   pistons   N/2 π d c³ (1 + 1.5 ε²) ψ/(12 µ √(L² − R² tan² α))      half the pistons stand under pressure
 *   face, scores   G ψ/µ with the conductance of {@link FaceGap}, {@link Score}
 *   seat      C_d a √(2Δp/ρ), {@link Orifice}
 *
 *   ψ   gap pressure of Δp, {@link OilAt}   Pa
 * </pre>
 *
 * A score across the bridge leaks from side to side at the same Δp. Source: the laws named. Checked against the settled drive's ledger.
 *
 * @param pressure Δp, Pa
 * @param oilTemperature K
 */
public record PartLeak(double pressure, double oilTemperature) {
    private static final double TWO_PI = 2 * Math.PI;

    /** @throws IllegalArgumentException when pressure or temperature are outside what oil laws hold for */
    public PartLeak {
        if (!(pressure > 0 && pressure <= 6e7) || !(oilTemperature >= 240 && oilTemperature <= 420)) {
            throw new IllegalArgumentException("leak at " + pressure + " Pa and " + oilTemperature + " K");
        }
    }

    /** Leak of a part of a drive, values in index order, SI; m³/s. */
    public double of(WearPart part, double[] vector) {
        OilAt oil = SteadySolver.oilOf(vector).at(oilTemperature);
        if (part.kind() == WearKind.SPRING) {
            return 0;
        }
        if (part.kind() == WearKind.SEAT_LEAK) {
            return Orifice.flow(vector[part.moved().index()], pressure, oil.density());
        }
        double laminar = oil.gapPressure(Oil.ATMOSPHERE + pressure) / oil.dynamicViscosity();
        return laminar * conductance(part, vector);
    }

    /** What the pump would deliver at the governed input speed and full stroke, m³/s: what leaks are shares of. */
    public static double delivery(double[] vector) {
        double input = vector[InputParameter.ENGINE_NO_LOAD_SPEED.index()]
                * vector[InputParameter.BELT_SPEED_RATIO.index()]; // rad/s
        return input
                / TWO_PI
                * vector[UnitParameter.pump(UnitProperty.DISPLACEMENT).index()];
    }

    private static double conductance(WearPart part, double[] vector) {
        Unit unit = new Unit(part, vector);
        FaceGap face = unit.face();
        return switch (part.kind()) {
            case PISTON_PLAY ->
                unit.get(UnitProperty.PISTON_COUNT) / 2 * unit.piston(unit.get(UnitProperty.BORE_CLEARANCE));
            case WORST_PISTON -> {
                double bad = unit.get(UnitProperty.BAD_PISTON_CLEARANCE);
                double others = unit.get(UnitProperty.BORE_CLEARANCE);
                yield bad > others ? (unit.piston(bad) - unit.piston(others)) / 2 : 0;
            }
            case FLATNESS -> face.conductance();
            case BRIDGE_SCORE -> unit.score(face.bridgeLength());
            case FACE_SCORE, SCORE_A, SCORE_B -> unit.score(face.landWidth());
            case SEAT_LEAK, SPRING -> 0;
        };
    }

    /** Sizes of the unit a part belongs to. */
    private record Unit(WearPart part, double[] vector) {
        double get(UnitProperty property) {
            return vector[new UnitParameter(part.place().orElseThrow(), property).index()];
        }

        double piston(double clearance) {
            double length = get(UnitProperty.ENGAGED_LENGTH);
            double half = get(UnitProperty.PITCH_RADIUS) * Math.tan(get(UnitProperty.FULL_SWASH_ANGLE));
            double mean = Math.sqrt(length * length - half * half);
            return new AnnularGap(
                            get(UnitProperty.PISTON_DIAMETER), clearance, get(UnitProperty.BORE_ECCENTRICITY), mean)
                    .conductance();
        }

        FaceGap face() {
            return new FaceGap(
                    get(UnitProperty.FACE_GAP),
                    get(UnitProperty.KIDNEY_SPAN),
                    get(UnitProperty.LAND_INNER),
                    get(UnitProperty.KIDNEY_INNER),
                    get(UnitProperty.KIDNEY_OUTER),
                    get(UnitProperty.LAND_OUTER));
        }

        double score(double length) {
            double depth = vector[part.moved().index()];
            double width = vector[part.width().orElseThrow().index()];
            return new Score(width, depth, length, false).conductance();
        }
    }
}
