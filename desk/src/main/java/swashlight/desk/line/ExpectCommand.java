package swashlight.desk.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swashlight.desk.work.Desk;
import swashlight.desk.work.ExpectAsked;
import swashlight.desk.work.Outcome;
import swashlight.desk.work.Stated;

/** What readings should be on a machine. */
@Command
final class ExpectCommand extends DeskCommand {
    @Parameters(index = "0..*", arity = "0..*", paramLabel = "READING", descriptionKey = "reading")
    private List<String> kinds = new ArrayList<>();

    @Option(names = "--case", paramLabel = "CASE")
    private String machineCase;

    @Mixin
    private DriveOptions drive;

    private final Map<String, Stated> conditions = new LinkedHashMap<>();

    @Option(names = "--lifted")
    private boolean lifted;

    @Option(names = "--backwards")
    private boolean backwards;

    @Option(names = "--seed", paramLabel = "NUMBER")
    private long seed = 1;

    @Mixin
    private TableOptions table;

    @Mixin
    private PictureOptions picture;

    ExpectCommand(Session session) {
        super(session);
    }

    @Option(names = "--stroke", paramLabel = "SHARE")
    void stroke(String text) {
        conditions.put("stroke", new Stated("--stroke", text));
    }

    @Option(names = "--throttle", paramLabel = "SHARE")
    void throttle(String text) {
        conditions.put("throttle", new Stated("--throttle", text));
    }

    @Option(names = "--input-speed", paramLabel = "SPEED")
    void inputSpeed(String text) {
        conditions.put("inputSpeed", new Stated("--input-speed", text));
    }

    @Option(names = "--oil", paramLabel = "TEMPERATURE")
    void oil(String text) {
        conditions.put("oilTemperature", new Stated("--oil", text));
    }

    @Option(names = "--slope", paramLabel = "ANGLE|%")
    void slope(String text) {
        conditions.put("slope", new Stated("--slope", text));
    }

    @Option(names = "--load", paramLabel = "FORCE")
    void load(String text) {
        conditions.put("load", new Stated("--load", text));
    }

    @Option(names = "--distance", paramLabel = "LENGTH")
    void distance(String text) {
        conditions.put("distance", new Stated("--distance", text));
    }

    @Option(names = "--since", paramLabel = "TIME")
    void since(String text) {
        conditions.put("since", new Stated("--since", text));
    }

    @Option(names = "--outside", paramLabel = "TEMPERATURE")
    void outside(String text) {
        conditions.put("ambient", new Stated("--outside", text));
    }

    @Override
    Outcome outcome() {
        List<Stated> stated =
                kinds.stream().map(kind -> new Stated("READING", kind)).toList();
        ExpectAsked asked = new ExpectAsked(
                Named.machineCase(session(), Optional.ofNullable(machineCase)),
                stated,
                conditions,
                lifted,
                backwards,
                seed);
        return Desk.expect(drive.asked(session()), asked);
    }

    @Override
    Optional<String> patience() {
        return Optional.of(HelpWords.load().getString("expect.patience").replace("{0}", String.valueOf(seed)));
    }

    @Override
    Optional<TableOptions> table() {
        return Optional.of(table);
    }

    @Override
    Optional<PictureOptions> picture() {
        return Optional.of(picture);
    }
}
