package swashlight.drive.checks;

import swashlight.checks.CheckRow;

/** Nobody answers this row: write the law, or list the row in {@code later.csv}. */
final class NoLaw extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    NoLaw(CheckRow row) {
        super("no law for check " + row.id());
    }
}
