package swashlight.findings.wear;

/** How much one part of a machine may wear: found by halving, since more wear never helps. A workspace. */
final class Room {
    private static final int HALVINGS = 14; // of the whole range: a 16,000th

    private final Yardstick yardstick;
    private final double[] vector = WornMachines.room();

    Room(Yardstick yardstick) {
        this.yardstick = yardstick;
    }

    /**
     * The wear at which a machine just reaches what is required.
     *
     * @param others values (index order, SI) with everything else as it is and this part new
     * @param part which may wear
     * @param form factor of its shape, 1
     * @return SI unit of the part's kind; what a new part has where it misses without any wear, the most where it never does
     */
    double of(double[] others, WearPart part, double form) {
        double low = part.fresh(others);
        double high = Math.max(low, part.most(others));
        if (yardstick.margin(others) < 0) {
            return low;
        }
        if (reaches(others, part, high, form)) {
            return high;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (reaches(others, part, middle, form)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private boolean reaches(double[] others, WearPart part, double wear, double form) {
        System.arraycopy(others, 0, vector, 0, vector.length);
        part.wear(vector, wear, form);
        return yardstick.margin(vector) >= 0;
    }
}
