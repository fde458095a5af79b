package swashlight.desk.line;

import swashlight.desk.work.Outcome;

/** How the program ends; the only place where exit codes are given. */
enum Ending {
    /** Answered; "cannot tell" is an answer. */
    ANSWERED(0),
    /** A fault of our own. */
    OUR_FAULT(1),
    /** The input cannot be worked with. */
    INPUT(2),
    /** No settled state was found. */
    NOT_CONVERGED(3),
    /** Stopped by whoever waited; as a shell says it of an interrupted program. */
    STOPPED(130);

    private final int code;

    Ending(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }

    static Ending of(Outcome outcome) {
        if (outcome instanceof Outcome.Answered || outcome instanceof Outcome.Printed) {
            return ANSWERED;
        }
        if (outcome instanceof Outcome.Stopped) {
            return STOPPED;
        }
        return outcome instanceof Outcome.Refused ? INPUT : NOT_CONVERGED;
    }
}
