package swashlight.drive.motion;

/** What flows through each valve and orifice between sides, gallery and case in the last stage, m³/s; for whoever looks on. */
final class PathFlows {
    final double[] check = new double[2]; // gallery to side, without its bleed
    final double[] bleed = new double[2]; // gallery to side
    double bypass; // A to B
    double lifted; // both sides to the case
    double relief; // A to B
    double chargeRelief; // gallery to case

    /** Before each evaluation: what is shut passes nothing. */
    void clear() {
        bypass = 0;
        lifted = 0;
        relief = 0;
        chargeRelief = 0;
    }
}
