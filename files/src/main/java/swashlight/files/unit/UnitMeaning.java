package swashlight.files.unit;

import java.util.Locale;
import java.util.Optional;
import swashlight.drive.description.Dimension;

/** What units measure, in plain words, for messages. */
final class UnitMeaning {
    private UnitMeaning() {}

    /** The first dimension besides the one asked for that has this unit. */
    static Optional<Dimension> of(String written, Dimension asked) {
        for (Dimension dimension : Dimension.values()) {
            if (dimension != asked && UnitTable.find(dimension, written).isPresent()) {
                return Optional.of(dimension);
            }
        }
        return Optional.empty();
    }

    static String words(Dimension dimension) {
        return switch (dimension) {
            case NUMBER -> "a plain number";
            case ROTATION -> "a speed of rotation";
            case DISPLACEMENT -> "a displacement per revolution";
            default -> dimension.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }
}
