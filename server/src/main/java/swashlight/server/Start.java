package swashlight.server;

import io.quarkus.runtime.annotations.QuarkusMain;
import swashlight.desk.line.Swashlight;

/** Where the jar starts: the command line as it is. No server runs unless the command {@code serve} opens {@link PageDoor}. */
@QuarkusMain
public final class Start {
    private Start() {}

    /** Runs the command in the arguments and ends the program. */
    public static void main(String[] arguments) {
        Swashlight.main(arguments);
    }
}
