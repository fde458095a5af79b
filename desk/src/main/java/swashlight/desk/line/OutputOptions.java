package swashlight.desk.line;

import picocli.CommandLine.Option;
import swashlight.files.unit.UnitSystem;

/** How an answer is wanted, for every command. */
final class OutputOptions {
    /** The two systems of units, by the names the command line has for them. */
    enum Units {
        si(UnitSystem.SI),
        us(UnitSystem.US);

        private final UnitSystem system;

        Units(UnitSystem system) {
            this.system = system;
        }

        UnitSystem system() {
            return system;
        }
    }

    @Option(names = "--json")
    boolean json;

    @Option(names = "--units", paramLabel = "si|us")
    Units units = Units.si;

    @Option(names = "--out", paramLabel = "FILE")
    String out;
}
