package swashlight.drive.trace;

import swashlight.drive.motion.PortZone;

/** Oil missing in one place: a side, the gallery, or a chamber. */
public final class Cavity {
    private final Signal place;
    private final double[] zones = new double[PortZone.values().length]; // s
    private double first; // s
    private double last; // s
    private double lasting; // s
    private double worst; // 1
    private int times;
    private boolean open;

    private Cavity(Signal place) {
        this.place = place;
    }

    static Cavity in(Signal place) {
        return new Cavity(place);
    }

    void look(double missing, double time, double length) {
        if (missing > 0) {
            if (times == 0) {
                first = time;
            }
            if (!open) {
                times++;
            }
            lasting += length;
            last = time + length;
            worst = Math.max(worst, missing);
        }
        open = missing > 0;
    }

    void where(PortZone zone, double length) {
        zones[zone.ordinal()] += length;
    }

    /** The pressure that fell too low. */
    public Signal place() {
        return place;
    }

    /** When it first began, s; 0 when it never did. */
    public double first() {
        return first;
    }

    /** When it last ended or was still going on, s; 0 when there was none. */
    public double last() {
        return last;
    }

    /** How long in all, s. */
    public double lasting() {
        return lasting;
    }

    /** How often it began, 1. */
    public int times() {
        return times;
    }

    /** Largest share of the space that was without oil, 1. */
    public double worst() {
        return worst;
    }

    /** How long while a chamber was in a zone, s; 0 for what is no chamber. */
    public double lasting(PortZone zone) {
        return zones[zone.ordinal()];
    }
}
