package swashlight.findings.wear;

import java.util.HashMap;
import java.util.Map;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;

/** Drives for the tests of wear. */
final class Drives {
    private Drives() {}

    static DriveDescription typical() {
        return TypicalDrive.complete("any", true, Map.of());
    }

    /** A drive of which everything is known exactly. */
    static DriveDescription exact() {
        DriveDescription drive = typical();
        Map<Parameter, Quantity> known = new HashMap<>();
        for (Parameter parameter : Parameters.all()) {
            known.put(parameter, new Quantity(drive.value(parameter), 0, Origin.GIVEN));
        }
        return drive.with(known);
    }

    static WearPart part(String key) {
        return WearPart.find(key).orElseThrow();
    }
}
