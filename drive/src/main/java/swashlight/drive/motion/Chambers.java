package swashlight.drive.motion;

/** The chambers of one unit of a run, to be looked at; chamber 0 … count − 1. The last one has the bad bore, the first ones the idle pistons. */
public final class Chambers {
    private final ChamberSet set;
    private final SideSystem sides;

    Chambers(ChamberSet set, SideSystem sides) {
        this.set = set;
        this.sides = sides;
    }

    /** Number of chambers, 1. */
    public int count() {
        return set.count;
    }

    /** Absolute pressure, Pa. */
    public double pressure(int chamber) {
        return set.pressure[chamber];
    }

    /** Volume, m³. */
    public double volume(int chamber) {
        return set.volume[chamber];
    }

    /** How far the piston stands out of its middle position, longer chamber positive, m. */
    public double position(int chamber) {
        return (set.volume[chamber] - set.midVolume) / set.area;
    }

    /** Oil through the ports into the chamber, m³/s at ρ₀. */
    public double portFlow(int chamber) {
        return fromSideA(chamber) + fromSideB(chamber);
    }

    /** Oil from side A into the chamber, m³/s at ρ₀. */
    public double fromSideA(int chamber) {
        return set.fromA(chamber, sides.pressure[SideSystem.A]);
    }

    /** Oil from side B into the chamber, m³/s at ρ₀. */
    public double fromSideB(int chamber) {
        return set.fromB(chamber, sides.pressure[SideSystem.B]);
    }

    /** Oil out of the chamber past its piston and through its shoe, as the last step had it, m³/s at ρ₀. */
    public double leak(int chamber) {
        return set.lost(chamber);
    }

    /** Which port it is open to. */
    public PortZone zone(int chamber) {
        boolean a = set.gainA[chamber] > 0;
        boolean b = set.gainB[chamber] > 0;
        if (a || b) {
            return a && b ? PortZone.BOTH : a ? PortZone.SIDE_A : PortZone.SIDE_B;
        }
        return set.volume[chamber] >= set.midVolume ? PortZone.LARGEST : PortZone.SMALLEST;
    }
}
