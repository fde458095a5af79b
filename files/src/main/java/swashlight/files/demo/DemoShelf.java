package swashlight.files.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import swashlight.files.document.Complaints;
import swashlight.files.document.Source;
import swashlight.files.document.Spot;
import swashlight.files.unit.Nearest;

/** Names and texts of what comes along. All of it is invented and says so. */
public final class DemoShelf {
    /** What stands before the name of a demo where a file name could stand too. */
    public static final String PREFIX = "demo:";

    private static final List<String> DRIVES = List.of("light-rider", "zero-turn-side", "small-loader");
    private static final List<String> CASES = List.of(
            "rider-fades-uphill",
            "rider-slow-since-pushed",
            "side-weak-forward",
            "rider-fades-hot",
            "side-hard-to-push",
            "loader-slow-with-pallets",
            "rider-after-oil-change",
            "loader-howls-cold",
            "rider-slow-everywhere",
            "side-one-odd-reading",
            "rider-too-little-known",
            "loader-worn-pump");

    private static final List<String> AFTERWARDS = List.of("rider-belt-renewed");
    private static final List<String> TEARDOWNS = List.of("rider-opened");

    private static final List<String> PRICES = List.of("small-workshop");

    private DemoShelf() {}

    /** Names of the drives. */
    public static List<String> drives() {
        return DRIVES;
    }

    /** Names of the machine cases. */
    public static List<String> cases() {
        return CASES;
    }

    /** The text of a drive. */
    public static Source drive(String name) {
        return text(name, DRIVES, "drive-");
    }

    /** The text of a case, before or after a repair. */
    public static Source machineCase(String name) {
        return text(name, AFTERWARDS.contains(name) ? AFTERWARDS : CASES, "case-");
    }

    /** Names of cases read again after a repair: nothing is wrong with them any more. */
    public static List<String> afterwards() {
        return AFTERWARDS;
    }

    /** Whether a name is that of a case, before or after a repair. */
    public static boolean isCase(String name) {
        return CASES.contains(name) || AFTERWARDS.contains(name);
    }

    /** Names of the teardowns. */
    public static List<String> teardowns() {
        return TEARDOWNS;
    }

    /** The text of a teardown. */
    public static Source teardown(String name) {
        return text(name, TEARDOWNS, "teardown-");
    }

    /** Names of the price lists. */
    public static List<String> prices() {
        return PRICES;
    }

    /** The text of a price list. */
    public static Source prices(String name) {
        return text(name, PRICES, "prices-");
    }

    private static Source text(String name, List<String> names, String prefix) {
        if (!names.contains(name)) {
            Complaints complaints = new Complaints(PREFIX + name);
            complaints.add(
                    "not-found",
                    Spot.START,
                    "",
                    name,
                    "there is no demo of that name",
                    Nearest.to(name, names)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("there are " + String.join(", ", names)));
            throw complaints.fault();
        }
        String file = prefix + name + ".yaml";
        try (InputStream stream = DemoShelf.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("resource " + file + " is missing from the build");
            }
            return Source.of(PREFIX + name + ".yaml", stream.readAllBytes());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
