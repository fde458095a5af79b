package swashlight.findings.proof;

import swashlight.findings.reading.ReadingKind;

/** Which way a machine is off when a reading of a kind, as it is compared (speeds for times), is off. */
enum Worse {
    LESS,
    MORE,
    EITHER;

    static Worse of(ReadingKind kind) {
        return switch (kind) {
            case RUN_TIME,
                    GROUND_SPEED,
                    AXLE_SPEED,
                    DRAWBAR_PULL,
                    ENGINE_SPEED,
                    INPUT_SPEED,
                    GALLERY_PRESSURE,
                    WARM_UP_TIME,
                    PUMP_TONE,
                    MOTOR_TONE,
                    ARM_TRAVEL -> LESS;
            case ROLL_TIME, ROLL_SPEED, PUSH_FORCE, WARM_TEMPERATURE -> MORE;
            case CREEP_SPEED, HIGH_PRESSURE, PART_DIMENSION -> EITHER;
        };
    }
}
