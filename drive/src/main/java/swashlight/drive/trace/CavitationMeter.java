package swashlight.drive.trace;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.description.Place;
import swashlight.drive.motion.Chambers;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionWatcher;
import swashlight.drive.motion.PortZone;

/** Where oil was missing (absolute pressure below that at which the oil parts), when, how long and how much; from the moment it is made. */
public final class CavitationMeter implements MotionWatcher {
    private static final MotionChannel[] SPACES = {
        MotionChannel.PRESSURE_A, MotionChannel.PRESSURE_B, MotionChannel.GALLERY_PRESSURE
    };

    private final List<Cavity> cavities = new ArrayList<>();
    private final int pumpChambers;
    private final int motorChambers;
    private double time; // s

    /** Begins now. */
    public CavitationMeter(MotionRun run) {
        for (MotionChannel space : SPACES) {
            cavities.add(Cavity.in(Signal.of(space)));
        }
        pumpChambers = run.chambers(Place.PUMP).count();
        motorChambers = run.chambers(Place.MOTOR).count();
        for (int k = 0; k < pumpChambers; k++) {
            cavities.add(Cavity.in(Signal.pressure(Place.PUMP, k)));
        }
        for (int k = 0; k < motorChambers; k++) {
            cavities.add(Cavity.in(Signal.pressure(Place.MOTOR, k)));
        }
        time = run.time();
    }

    @Override
    public void stepped(MotionRun run) {
        double now = run.time();
        double length = now - time; // s
        for (int i = 0; i < SPACES.length; i++) {
            cavities.get(i).look(run.missing(run.value(SPACES[i])), time, length);
        }
        chambers(run, Place.PUMP, SPACES.length, length);
        chambers(run, Place.MOTOR, SPACES.length + pumpChambers, length);
        time = now;
    }

    private void chambers(MotionRun run, Place place, int first, double length) {
        Chambers chambers = run.chambers(place);
        for (int k = 0; k < chambers.count(); k++) {
            double missing = run.missing(chambers.pressure(k));
            Cavity cavity = cavities.get(first + k);
            cavity.look(missing, time, length);
            if (missing > 0) {
                cavity.where(chambers.zone(k), length);
            }
        }
    }

    /** Every place looked at, whether oil was missing there or not: the sides and the gallery, then the chambers. */
    public List<Cavity> all() {
        return List.copyOf(cavities);
    }

    /** The places where oil was missing, longest first. */
    public List<Cavity> found() {
        List<Cavity> found = new ArrayList<>();
        for (Cavity cavity : cavities) {
            if (cavity.lasting() > 0) {
                found.add(cavity);
            }
        }
        found.sort((a, b) -> Double.compare(b.lasting(), a.lasting()));
        return found;
    }

    /** How long, added up over a unit's chambers, oil was missing while a chamber was in a zone, s. */
    public double lasting(Place place, PortZone zone) {
        int first = SPACES.length + (place == Place.PUMP ? 0 : pumpChambers);
        int count = place == Place.PUMP ? pumpChambers : motorChambers;
        double sum = 0;
        for (int k = 0; k < count; k++) {
            sum += cavities.get(first + k).lasting(zone);
        }
        return sum;
    }
}
