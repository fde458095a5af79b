package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.gap.AnnularGap;
import swashlight.drive.gap.FaceGap;
import swashlight.drive.gap.Orifice;
import swashlight.drive.gap.Score;
import swashlight.drive.gap.ScoreShape;

/** The law behind each row of theme {@code gap}. */
final class GapAnswers {
    private GapAnswers() {}

    static double answer(CheckRow row) {
        return switch (row.family()) {
            case "gap-annular" -> annular(row);
            case "gap-mean-speed" -> speed(row);
            case "gap-reynolds" -> row.si("rho") * speed(row) * row.si("c") / row.si("mu");
            case "gap-eccentric-factor" ->
                new AnnularGap(0.02, 1e-5, row.si("e"), 0.03).conductance()
                        / new AnnularGap(0.02, 1e-5, 0, 0.03).conductance();
            case "gap-radial" -> radial(row.si("h"), row.si("ratio")) / row.si("mu") * row.si("dp");
            case "gap-slot-factor" -> ScoreShape.RECTANGULAR.share(row.si("ratio"));
            case "gap-triangle-factor" -> ScoreShape.TRIANGULAR.share(row.si("ratio"));
            case "gap-triangle-flow" -> new Score(1, row.si("ratio"), 1, true).conductance();
            case "gap-equilateral" -> new Score(1, Math.sqrt(3) / 2, 1, true).conductance();
            case "gap-score-rectangular" -> score(row, false);
            case "gap-score-triangular" -> score(row, true);
            case "gap-orifice" -> Orifice.flow(row.si("cd"), Orifice.area(row.si("d")), row.si("dp"), row.si("rho"));
            case "face-shear" ->
                new FaceGap(row.si("h"), 1, row.si("r1"), 0.015, 0.025, row.si("r4")).dragCoefficient()
                        * row.si("mu")
                        * row.si("n");
            default -> throw new NoLaw(row);
        };
    }

    /** Conductance of a whole ring between radii of that ratio: two quarter-turn kidneys with two such lands each make one. */
    static double radial(double gap, double ratio) {
        double r1 = 0.010; // m
        double r3 = 2 * r1 * ratio;
        return 2 * new FaceGap(gap, Math.PI / 2, r1, r1 * ratio, r3, r3 * ratio).conductance();
    }

    private static double annular(CheckRow row) {
        return new AnnularGap(row.si("d"), row.si("c"), row.si("e"), row.si("L")).leakage(row.si("dp"), row.si("mu"));
    }

    private static double speed(CheckRow row) {
        return annular(row) / (Math.PI * row.si("d") * row.si("c"));
    }

    private static double score(CheckRow row, boolean triangular) {
        double thin = new Score(row.si("b"), row.si("s"), row.si("l"), triangular).thinConductance();
        return thin / row.si("mu") * row.si("dp");
    }
}
