package swashlight.drive.machine;

/**
 * Power lost in one gear mesh by sliding of the teeth.
 *
 * <pre>
 *   H = π (u + 1) (1 − ε_α + ε₁² + ε₂²)/(z₁ u cos β),   η = 1 − f H
 *
 *   z₁     teeth of the pinion                      1     8 …
 *   u      ratio of teeth                           1     ≥ 1
 *   ε₁, ε₂ contact ratio of each addendum, ε_α their sum   1
 *   β      helix angle at the base                  rad
 *   f      mean friction coefficient                1     0.03 … 0.1
 * </pre>
 *
 * Source: Niemann and Winter; ISO/TR 14179-2 (from memory). Check: {@code tooth-loss-factor}, {@code tooth-efficiency},
 * {@code mesh-efficiency}.
 *
 * @param pinionTeeth z₁, unit 1
 * @param ratio u, unit 1
 * @param approach ε₁, unit 1
 * @param recess ε₂, unit 1
 */
public record ToothLoss(int pinionTeeth, double ratio, double approach, double recess) {
    /** @throws IllegalArgumentException when a value is outside its range */
    public ToothLoss {
        if (pinionTeeth < 1 || !(ratio >= 1) || !(approach > 0) || !(recess > 0)) {
            throw new IllegalArgumentException("a mesh needs z₁ ≥ 1, u ≥ 1, ε₁, ε₂ > 0: " + pinionTeeth + ", " + ratio
                    + ", " + approach + ", " + recess);
        }
    }

    /** H for a base helix angle (rad), unit 1. */
    public double factor(double helix) {
        double overlap = 1 - approach - recess + approach * approach + recess * recess;
        return Math.PI * (ratio + 1) * overlap / (pinionTeeth * ratio * Math.cos(helix));
    }

    /** η of the mesh for a base helix angle (rad) and a friction coefficient (unit 1), unit 1. */
    public double efficiency(double helix, double friction) {
        return 1 - friction * factor(helix);
    }

    /** η of equal meshes one after another, unit 1. */
    public static double train(double meshEfficiency, int meshes) {
        double efficiency = 1;
        for (int i = 0; i < meshes; i++) {
            efficiency *= meshEfficiency;
        }
        return efficiency;
    }
}
