package swashlight.findings.losses;

/**
 * Ways of losing torque.
 * <pre>
 *   viscous       C_v d µ ω                    sheared films
 *   Coulomb       C_f d Δp                     loaded rubbing
 *   hydrodynamic  ½ x C_h ρ ω² d^(5/3)         churning and turning flow
 *   constant      T_0                          seals, springs
 *
 *   d = V/2π     m³      C_v, C_f, C_h  1      T_0  N·m
 * </pre>
 * Source: as {@link swashlight.drive.unit.LossModel}. Check: {@code loss-model-torque-loss}.
 */
public enum TorqueTerm implements LossTerm {
    /** Sheared films. */
    VISCOUS("viscous", "sheared films, C_v", "1") {
        @Override
        public double at(BenchPoint point, BenchRun test) {
            return test.viscosity(point) * point.speed();
        }

        @Override
        public double scale(double displacement) {
            return displacement / TURN;
        }
    },
    /** Loaded rubbing. */
    COULOMB("coulomb", "loaded rubbing, C_f", "1") {
        @Override
        public double at(BenchPoint point, BenchRun test) {
            return point.pressureDifference();
        }

        @Override
        public double scale(double displacement) {
            return displacement / TURN;
        }
    },
    /** Churning and turning flow. */
    HYDRODYNAMIC("hydrodynamic", "churning and turning flow, C_h", "1") {
        @Override
        public double at(BenchPoint point, BenchRun test) {
            double density = test.oil().density(point.temperature());
            return 0.5 * point.share() * density * point.speed() * point.speed();
        }

        @Override
        public double scale(double displacement) {
            return Math.pow(displacement / TURN, 5.0 / 3);
        }
    },
    /** The same everywhere. */
    CONSTANT("constant-torque", "torque lost everywhere alike", "N·m") {
        @Override
        public double at(BenchPoint point, BenchRun test) {
            return 1;
        }

        @Override
        public double scale(double displacement) {
            return 1;
        }
    };

    private static final double TURN = 2 * Math.PI;

    private final String key;
    private final String words;
    private final String unit;

    TorqueTerm(String key, String words, String unit) {
        this.key = key;
        this.words = words;
        this.unit = unit;
    }

    @Override
    public String unit() {
        return unit;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String words() {
        return words;
    }
}
