package swashlight.drive.motion;

/**
 * What presses one block on its port face and what lifts it off.
 *
 * <pre>
 *   clamping    A Σ (p_k − p_case) + spring                                              N
 *   separating  β A [ s Σ (p_k − p_case) + (1 − s) (N/2) (p_A + p_B − 2 p_case) ]        N
 *
 *   β   balance ratio: separating over clamping of the pressures alone, in the mean      1   0.5 … 1.2
 *   s   share of the pressed field that comes and goes with the chambers                 1   0.9
 *   A   area of a piston                                                                 m²
 *   N   pistons                                                                          1
 * </pre>
 *
 * The pressed field is a kidney together with the block's slots that reach into it, so it grows and shrinks as slots arrive and leave:
 * with slots as wide as the bridge between kidneys its angle changes by 0.90 (7 pistons) to 1.0 (9 pistons) of a piston pitch a slot.
 * The film lets a block rise only as fast as oil flows in under it, some nanometres while a piston passes; so a lift counts when forces
 * smoothed over {@link #FILM_TIME} say so. Where on the face the forces act, and so whether the block tips, is not computed: the
 * description does not know where the plate's side force is carried. Source: balance of forces, textbook; s from the geometry named; film
 * time: own estimate. SI.
 */
final class BlockHold {
    /** Time over which forces count together, s: a turn at 3000 rpm (own estimate). */
    static final double FILM_TIME = 0.02;

    private static final double WITH_CHAMBERS = 0.9; // s, 1
    private static final double LEAST_FORCE = 1e-9; // N

    private final ChamberSet unit;
    private final double balance; // β, 1
    private final double spring; // N
    private double clampingMean; // N
    private double separatingMean; // N
    private boolean begun;

    BlockHold(ChamberSet unit, double balance, double spring) {
        this.unit = unit;
        this.balance = balance;
        this.spring = spring;
    }

    private double clamping() {
        return Math.max(0, unit.load) * unit.area + spring;
    }

    private double separating(SideSystem sides) {
        double gauge = sides.pressure[SideSystem.A] + sides.pressure[SideSystem.B] - 2 * sides.casePressure;
        double field = WITH_CHAMBERS * unit.load + (1 - WITH_CHAMBERS) * unit.count / 2 * gauge;
        return balance * unit.area * Math.max(0, field);
    }

    /** Separating over clamping force now, 1. */
    double ratio(SideSystem sides) {
        return separating(sides) / Math.max(clamping(), LEAST_FORCE);
    }

    /** Goes on by a step (s); true while the smoothed separating force is the larger. */
    boolean lifts(SideSystem sides, double step) {
        double share = begun ? step / (step + FILM_TIME) : 1;
        begun = true;
        clampingMean += share * (clamping() - clampingMean);
        separatingMean += share * (separating(sides) - separatingMean);
        return separatingMean > clampingMean;
    }
}
