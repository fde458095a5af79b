package swashlight.desk.line;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.RunAsked;
import swashlight.desk.work.Stated;

/** A drive over time, piston by piston. */
@Command
final class RunCommand extends DeskCommand {
    @Parameters(index = "0", arity = "0..1", paramLabel = "DUTY|FILE", descriptionKey = "duty")
    private String duty;

    @Mixin
    private DriveOptions drive;

    @Mixin
    private HeldOptions held;

    @Option(names = "--for", paramLabel = "TIME")
    private String duration;

    @Option(names = "--tolerance", paramLabel = "NUMBER")
    private String tolerance = "0.001";

    @Option(names = "--traces", paramLabel = "FILE")
    private String traces;

    @Option(names = "--every", paramLabel = "TIME")
    private String every = "1 ms";

    @Option(names = "--orders", paramLabel = "FILE")
    private String orders;

    @Option(names = "--events", paramLabel = "FILE")
    private String events;

    @Option(names = "--frames", paramLabel = "FILE")
    private String frames;

    @Option(names = "--frame-every", paramLabel = "TIME")
    private String frameEvery = "1 ms";

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    RunCommand(Session session) {
        super(session);
    }

    @Override
    Outcome outcome() {
        RunAsked asked = new RunAsked(
                Optional.ofNullable(duty)
                        .map(name -> new Stated(
                                "DUTY",
                                Desk.isNamedDuty(name) ? name : file(name).toString())),
                held.stated(),
                held.fromRest(),
                Optional.ofNullable(duration).map(text -> new Stated("--for", text)),
                new Stated("--tolerance", tolerance),
                new Stated("--every", every),
                new Stated("--frame-every", frameEvery),
                Optional.ofNullable(traces).map(this::file),
                Optional.ofNullable(orders).map(this::file),
                Optional.ofNullable(frames).map(this::file),
                Optional.ofNullable(events).map(this::file));
        try (Waiting waiting = new Waiting(session(), "run")) {
            return Desk.run(drive.asked(session()), asked, waiting);
        }
    }

    private Path file(String name) {
        return session().file(name);
    }

    @Override
    Optional<String> patience() {
        return Optional.empty();
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }

    @Override
    Optional<PictureOptions> picture() {
        return Optional.of(picture);
    }

    /** Conditions that can be held through a run instead of what the duty says. */
    static final class HeldOptions {
        private final Map<String, Stated> stated = new LinkedHashMap<>();
        private boolean fromRest;

        @Option(names = "--oil", paramLabel = "TEMPERATURE")
        void oil(String text) {
            stated.put("oilTemperature", new Stated("--oil", text));
        }

        @Option(names = "--slope", paramLabel = "ANGLE|%")
        void slope(String text) {
            stated.put("slope", new Stated("--slope", text));
        }

        @Option(names = "--load", paramLabel = "FORCE")
        void load(String text) {
            stated.put("load", new Stated("--load", text));
        }

        @Option(names = "--throttle", paramLabel = "SHARE")
        void throttle(String text) {
            stated.put("throttle", new Stated("--throttle", text));
        }

        @Option(names = "--outside", paramLabel = "TEMPERATURE")
        void outside(String text) {
            stated.put("ambient", new Stated("--outside", text));
        }

        @Option(names = "--air", paramLabel = "PRESSURE")
        void air(String text) {
            stated.put("ambientPressure", new Stated("--air", text));
        }

        @Option(names = "--from-rest")
        void fromRest(boolean yes) {
            fromRest = yes;
        }

        Map<String, Stated> stated() {
            return stated;
        }

        boolean fromRest() {
            return fromRest;
        }
    }
}
