package swashlight.findings.expect;

import swashlight.drive.steady.Duty;

/** How a cause changes the duty from what was believed. */
@FunctionalInterface
public interface DutyShift {
    /** The duty as it really is. */
    Duty of(Duty believed);
}
