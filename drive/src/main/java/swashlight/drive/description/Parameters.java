package swashlight.drive.description;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The closed list of everything that describes a drive, in the order of its vector. */
public final class Parameters {
    private static final List<Parameter> ALL = list();
    private static final Map<String, Parameter> BY_KEY = keyed();

    private Parameters() {}

    /** All parameters, in index order. */
    public static List<Parameter> all() {
        return ALL;
    }

    /** How many; unit 1. */
    public static int count() {
        return ALL.size();
    }

    /** The parameter with a key such as {@code pump.boreClearance}. */
    public static Optional<Parameter> find(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    private static List<Parameter> list() {
        List<Parameter> all = new ArrayList<>();
        Collections.addAll(all, OilParameter.values());
        for (Place place : Place.values()) {
            for (UnitProperty property : UnitProperty.values()) {
                all.add(new UnitParameter(place, property));
            }
        }
        Collections.addAll(all, LoopParameter.values());
        Collections.addAll(all, MakeUpParameter.values());
        Collections.addAll(all, InputParameter.values());
        Collections.addAll(all, OutputParameter.values());
        Collections.addAll(all, HeatParameter.values());
        return List.copyOf(all);
    }

    private static Map<String, Parameter> keyed() {
        Map<String, Parameter> map = new HashMap<>();
        for (Parameter parameter : ALL) {
            map.put(parameter.key(), parameter);
        }
        return Collections.unmodifiableMap(map);
    }
}
