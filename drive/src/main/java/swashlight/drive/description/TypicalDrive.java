package swashlight.drive.description;

import java.util.Map;

/**
 * Completes a drive of which only some numbers are known (a nameplate is enough): whatever is missing becomes what is usual for
 * the size, marked {@link Origin#TYPICAL} with its spread. Rules: common practice, no source; scaled from a pump of 7 cm³/rev.
 */
public final class TypicalDrive {
    private static final double REFERENCE_DISPLACEMENT = 7e-6; // m³/rev, the pump the scales refer to

    private TypicalDrive() {}

    /**
     * A whole description from what is known.
     *
     * @param name the drive's name
     * @param invented true for a drive no one builds
     * @param known values by parameter, SI
     * @return the completed description
     * @throws DescriptionFault when what is known cannot be a drive
     */
    public static DriveDescription complete(String name, boolean invented, Map<Parameter, Quantity> known) {
        Completion completion = new Completion(known);
        TypicalUnit.usualDisplacements().forEach((place, usual) -> new TypicalUnit(completion, place).complete(usual));
        double size = completion.get(UnitParameter.pump(UnitProperty.DISPLACEMENT)) / REFERENCE_DISPLACEMENT;
        sized(completion, size);
        for (Parameter parameter : Parameters.all()) {
            completion.give(parameter, parameter.facts().typical());
        }
        return new DriveDescription(name, invented, completion.inOrder());
    }

    private static void sized(Completion drive, double size) {
        double surface = Math.pow(size, 2.0 / 3);
        drive.give(LoopParameter.VOLUME_A, 20e-6 * size); // m³
        drive.give(LoopParameter.VOLUME_B, 20e-6 * size); // m³
        drive.give(LoopParameter.CHECK_AREA, 2e-5 * surface); // m²
        boolean lifts = drive.has(LoopParameter.BYPASS_LIFT) && drive.get(LoopParameter.BYPASS_LIFT) > 0;
        drive.give(LoopParameter.BYPASS_AREA, lifts ? 0 : 4e-5 * surface); // m²
        drive.give(MakeUpParameter.FILTER_RESISTANCE, 6.7e9 / size); // 1/m³: 10 kPa at 3 L/min and 30 mPa·s
        drive.give(MakeUpParameter.GALLERY_VOLUME, 8e-6 * size); // m³
        double rated = 25 * Math.pow(size, 0.75); // N·m: 8 kW at 3000 rpm for the reference
        drive.give(InputParameter.ENGINE_PEAK_TORQUE, 1.2 * drive.give(InputParameter.ENGINE_RATED_TORQUE, rated));
        drive.give(InputParameter.BELT_CAPACITY, 33 * size); // N·m
        drive.give(HeatParameter.CAPACITY, 12e3 * size); // J/K
        drive.give(
                HeatParameter.CONDUCTANCE_STILL, 0.47 * drive.give(HeatParameter.CONDUCTANCE_FAN, 15 * surface)); // W/K
    }
}
