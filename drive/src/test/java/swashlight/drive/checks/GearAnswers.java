package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.machine.ToothLoss;

/** The law behind each row of theme {@code gear}. */
final class GearAnswers {
    private GearAnswers() {}

    static double answer(CheckRow row) {
        return switch (row.family()) {
            case "mesh-efficiency" -> ToothLoss.train(row.si("mesh"), (int) row.si("count"));
            case "tooth-loss-factor" -> mesh(row).factor(row.si("helix"));
            case "tooth-efficiency" -> mesh(row).efficiency(row.si("helix"), row.si("friction"));
            default -> throw new NoLaw(row);
        };
    }

    private static ToothLoss mesh(CheckRow row) {
        return new ToothLoss((int) row.si("z1"), row.si("u"), row.si("eps1"), row.si("eps2"));
    }
}
