package swashlight.drive.steady;

/**
 * The slow and sure way to engine, belt and pump: the belt's load is halved in between until pump torque and belt torque meet, the rest being
 * solved at each known shaft speed. A pump asks less torque the slower it turns, the belt gives more the more it is loaded: one crossing.
 * Now and then all is tried at once, and taken when it lands between the bounds.
 */
final class LoadSearch {
    private static final int HALVINGS = 60; // from the whole range to rounding
    private static final int BETWEEN_TRIES = 6;

    private LoadSearch() {}

    static boolean solve(SteadyKernel kernel) {
        Balance balance = kernel.balance;
        double low = -balance.engine.mostLoad();
        double high = balance.engine.mostLoad();
        for (int count = 1; count <= HALVINGS; count++) {
            double middle = (low + high) / 2;
            balance.engineDrives = false;
            balance.engine.at(middle);
            balance.pumpSpeed = Math.max(0, balance.engine.shaftSpeed);
            if (kernel.solve() && balance.engine.torque < balance.pumpTorque) {
                low = middle;
            } else {
                high = middle;
            }
            balance.engineDrives = true;
            balance.unknown[Balance.INPUT] = (low + high) / 2;
            if (count % BETWEEN_TRIES == 0 && kernel.polish() && inside(balance.unknown[Balance.INPUT], low, high)) {
                return true;
            }
        }
        return kernel.polish();
    }

    private static boolean inside(double load, double low, double high) {
        return load >= low && load <= high;
    }
}
