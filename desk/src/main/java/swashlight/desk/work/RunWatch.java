package swashlight.desk.work;

/** Somebody who waits for a long piece of work, and may have enough of it. */
public interface RunWatch {
    /** So much of it is done, 0 … 1. */
    void reached(double share);

    /** Whether to stop here. */
    boolean stopped();

    /** Nobody waits. */
    static RunWatch nobody() {
        return new RunWatch() {
            @Override
            public void reached(double share) {}

            @Override
            public boolean stopped() {
                return false;
            }
        };
    }
}
