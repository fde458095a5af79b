package swashlight.findings.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How wild readings fared over many machines.
 *
 * @param machines whose wild readings were kept
 * @param wild readings drawn from the wide law
 * @param loud of them off by more than five errors of the instrument: many of the others cannot be told from honest ones
 * @param loudMachines machines with a loud one
 * @param caught machines with a loud one where the reading distrusted is a loud one
 * @param named machines where a reading is distrusted
 * @param namedRight machines where the reading distrusted is wild, loud or not
 */
public record WildCount(int machines, int wild, int loud, int loudMachines, int caught, int named, int namedRight) {
    private static final double LOUD = 5; // errors of the instrument, 1 (own choice)

    static Optional<WildCount> of(List<StudyRow> rows) {
        List<Slips> kept = rows.stream().flatMap(row -> row.slips().stream()).toList();
        int wild = 0;
        int loud = 0;
        int loudMachines = 0;
        int caught = 0;
        int named = 0;
        int namedRight = 0;
        for (Slips slips : kept) {
            Map<Integer, Double> places = slips.wild();
            long here = places.values().stream().filter(WildCount::loud).count();
            int place = slips.named().orElse(-1);
            wild += places.size();
            loud += (int) here;
            loudMachines += here > 0 ? 1 : 0;
            caught += loud(places.getOrDefault(place, 0.0)) ? 1 : 0;
            named += place >= 0 ? 1 : 0;
            namedRight += places.containsKey(place) ? 1 : 0;
        }
        return kept.isEmpty()
                ? Optional.empty()
                : Optional.of(new WildCount(kept.size(), wild, loud, loudMachines, caught, named, namedRight));
    }

    private static boolean loud(double off) {
        return Math.abs(off) > LOUD;
    }
}
