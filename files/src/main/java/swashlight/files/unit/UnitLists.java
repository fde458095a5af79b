package swashlight.files.unit;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import swashlight.drive.description.Dimension;

/** The table while it is being written: a list for each dimension. */
final class UnitLists {
    private final Map<Dimension, UnitList> lists = new EnumMap<>(Dimension.class);

    UnitList of(Dimension dimension) {
        return lists.computeIfAbsent(dimension, UnitList::new);
    }

    Map<Dimension, UnitList> done() {
        for (Dimension dimension : Dimension.values()) {
            if (!lists.containsKey(dimension)) {
                throw new IllegalStateException("no units for " + dimension);
            }
        }
        return Collections.unmodifiableMap(lists);
    }
}
