package swashlight.findings.rig;

/**
 * Where the classes meet, stated beforehand as shares of the healthy flow; no label is looked at.
 *
 * @param some share above which there is a leak, 1
 * @param severe share above which it is severe, 1
 * @param sure chance a class must have to be called without doubt, 1
 */
public record LeakRule(double some, double severe, double sure) {
    /** @throws IllegalArgumentException if the limits are not in order */
    public LeakRule {
        if (!(0 < some && some < severe && severe < 1 && 0.5 < sure && sure < 1)) {
            throw new IllegalArgumentException("leak limits are " + some + " and " + severe + ", sure at " + sure
                    + "; needed: 0 < some < severe < 1 and 0.5 < sure < 1");
        }
    }

    /**
     * 1 % of the flow is what a flow meter of ordinary class can see; at 3.5 % a pump of 90 % volumetric efficiency has lost a
     * third of its remaining reserve. Ours; state others for another rig.
     */
    public static LeakRule usual() {
        return new LeakRule(0.01, 0.035, 0.95);
    }

    /**
     * A class with the chance of it.
     *
     * @param likeliest the class
     * @param chance of it, 1
     * @param certain whether the chance reaches the rule's demand
     */
    public record Verdict(LeakClass likeliest, double chance, boolean certain) {
        /** The verdict in plain words. */
        public String words() {
            return (certain ? "" : "cannot tell, likeliest ") + likeliest.words();
        }
    }

    /** The class of a leak. */
    public Verdict of(CycleLeak leak) {
        double atLeastSome = leak.chanceAbove(some);
        double atLeastSevere = leak.chanceAbove(severe);
        double between = atLeastSome - atLeastSevere;
        double none = 1 - atLeastSome;
        LeakClass likeliest = none >= between && none >= atLeastSevere
                ? LeakClass.NONE
                : between >= atLeastSevere ? LeakClass.SOME : LeakClass.SEVERE;
        double chance = Math.max(none, Math.max(between, atLeastSevere));
        return new Verdict(likeliest, chance, chance >= sure);
    }
}
