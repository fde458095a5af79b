package swashlight.findings.losses;

/**
 * Ways of losing flow.
 * <pre>
 *   laminar      C_s d Δp/µ               gaps
 *   compression  x d ω Δp / B             oil squeezed each turn
 *   turbulent    C_st d^(2/3) √(2 Δp/ρ)   sharp edges
 *   constant     Q_0                      pilot flow, meter zero
 *
 *   d = V/2π     m³      C_s, C_st  1      B  Pa      Q_0  m³/s
 * </pre>
 * Source: as {@link swashlight.drive.unit.LossModel}. Check: {@code loss-model-flow-loss}.
 */
public enum FlowTerm implements LossTerm {
    /** Through gaps. */
    LAMINAR("laminar", "leak through gaps, C_s", "1") {
        @Override
        public double at(BenchPoint point, BenchRun test) {
            return point.pressureDifference() / test.viscosity(point);
        }

        @Override
        public double scale(double displacement) {
            return displacement / TURN;
        }
    },
    /** Squeezed each turn. */
    COMPRESSION("compression", "oil squeezed each turn, 1/B", "1/Pa") {
        @Override
        public double at(BenchPoint point, BenchRun test) {
            return point.share() * point.speed() * point.pressureDifference();
        }

        @Override
        public double scale(double displacement) {
            return displacement / TURN;
        }
    },
    /** Past sharp edges. */
    TURBULENT("turbulent", "leak past sharp edges, C_st", "1") {
        @Override
        public double at(BenchPoint point, BenchRun test) {
            return Math.sqrt(2 * point.pressureDifference() / test.oil().density(point.temperature()));
        }

        @Override
        public double scale(double displacement) {
            return Math.pow(displacement / TURN, 2.0 / 3);
        }
    },
    /** The same everywhere. */
    CONSTANT("constant-flow", "flow lost everywhere alike", "m³/s") {
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

    FlowTerm(String key, String words, String unit) {
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
