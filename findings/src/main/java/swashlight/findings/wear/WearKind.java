package swashlight.findings.wear;

import swashlight.drive.description.Dimension;

/**
 * What can be measured on a worn part, with the usual gauge and with what the number leaves open about the shape of the wear. Figures: common
 * practice and own estimates, no source.
 *
 * <pre>
 *   play       diametral; the drive knows the radial clearance, half of it
 *   flatness   out of flat, both faces together; the film grows by k times it, k = 0.5 ± 0.15 (dished, tilted or wavy is not known)
 *   score      deepest depth; it leaks like a flat-bottomed one k times as deep, k = 0.8 ± 0.1 (a notch would be 0.63, flat bottom 1)
 *   seat leak  kerosene past the shut valve in a second, at a bar; it leaks as a hole of k times the area, k = 1 ± 0.25
 *   spring     shortening against the free length when new
 * </pre>
 */
public enum WearKind {
    PISTON_PLAY("piston-play", Dimension.LENGTH, new Gauge("bore-gauge", 4.5e-6, 0, 0, 2e-6), 1, 0),
    WORST_PISTON("worst-piston", Dimension.LENGTH, new Gauge("bore-gauge", 4.5e-6, 0, 0, 2e-6), 1, 0),
    FLATNESS("flatness", Dimension.LENGTH, new Gauge("straight-edge", 3e-6, 0.1, 0, 1e-6), 0.5, 0.15),
    FACE_SCORE("face-score", Dimension.LENGTH, new Gauge("depth-needle", 4e-6, 0.05, -2e-6, 2e-6), 0.8, 0.1),
    SCORE_A("score-a", Dimension.LENGTH, new Gauge("depth-needle", 4e-6, 0.05, -2e-6, 2e-6), 0.8, 0.1),
    SCORE_B("score-b", Dimension.LENGTH, new Gauge("depth-needle", 4e-6, 0.05, -2e-6, 2e-6), 0.8, 0.1),
    BRIDGE_SCORE("bridge-score", Dimension.LENGTH, new Gauge("depth-needle", 4e-6, 0.05, -2e-6, 2e-6), 0.8, 0.1),
    SEAT_LEAK("make-up-valve", Dimension.FLOW, new Gauge("seat-test", 2e-9, 0.1, 0, 0), 1, 0.25),
    SPRING("spring", Dimension.LENGTH, new Gauge("caliper", 5e-5, 0, 0, 3e-5), 1, 0);

    private final String key;
    private final Dimension dimension;
    private final Gauge gauge;
    private final double form;
    private final double formSpread;

    WearKind(String key, Dimension dimension, Gauge gauge, double form, double formSpread) {
        this.key = key;
        this.dimension = dimension;
        this.gauge = gauge;
        this.form = form;
        this.formSpread = formSpread;
    }

    /** Stable name. */
    public String key() {
        return key;
    }

    /** What is measured. */
    public Dimension dimension() {
        return dimension;
    }

    /** The usual instrument. */
    public Gauge gauge() {
        return gauge;
    }

    /** Usual factor k of the shape, 1. */
    public double form() {
        return form;
    }

    /** How well that is known, one standard deviation, 1. */
    public double formSpread() {
        return formSpread;
    }

    /** Whether it has a width as well. */
    public boolean isScore() {
        return this == FACE_SCORE || this == SCORE_A || this == SCORE_B || this == BRIDGE_SCORE;
    }
}
