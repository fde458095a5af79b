package swashlight.drive.steady;

import swashlight.drive.description.DriveDescription;

/** A drive ready to answer duties. Immutable face; each answer is computed from a cold start, so the same question gives the same bits. */
public final class SteadyDrive {
    private final double[] vector;

    /** A drive from its description. */
    public SteadyDrive(DriveDescription description) {
        this.vector = description.vector();
    }

    /** What the drive does under a duty. */
    public SteadyAnswer answer(Duty duty) {
        SteadySolver solver = new SteadySolver();
        solver.load(vector);
        boolean converged = solver.solve(duty);
        SteadyPoint point = new SteadyPoint();
        point.fill(solver);
        return converged
                ? new SteadyAnswer.Converged(point, point.residual(), point.iterations())
                : new SteadyAnswer.NotConverged(
                        point,
                        point.residual(),
                        point.iterations(),
                        "no settled state was found; try a smaller stroke or load, or check the description for extreme values");
    }
}
