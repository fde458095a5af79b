package swashlight.drive.heat;

/** Where a held duty's temperature ends. */
public sealed interface SettledTemperature {
    /** Losses and cooling meet at this temperature, K. */
    record Settled(double temperature) implements SettledTemperature {}

    /** They do not meet below the hottest temperature followed (K); surplus heat there, W. */
    record Unsettled(double hottest, double surplus) implements SettledTemperature {}
}
