package swashlight.desk.line;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import swashlight.desk.work.RequirementAsked;
import swashlight.desk.work.Stated;

/** What a machine must do. */
final class RequirementOptions {
    private final Map<String, Stated> stated = new LinkedHashMap<>();

    @Option(names = "--pressure", paramLabel = "PRESSURE", descriptionKey = "wear.pressure")
    private String pressure;

    @Option(names = "--need", paramLabel = "SHARE", descriptionKey = "wear.need")
    void need(String text) {
        stated.put("need", new Stated("--need", text));
    }

    @Option(names = "--speed", paramLabel = "SPEED", descriptionKey = "wear.speed")
    void speed(String text) {
        stated.put("speed", new Stated("--speed", text));
    }

    @Option(names = "--pull", paramLabel = "FORCE", descriptionKey = "wear.pull")
    void pull(String text) {
        stated.put("pull", new Stated("--pull", text));
    }

    @Option(names = "--roll", paramLabel = "SPEED", descriptionKey = "wear.roll")
    void roll(String text) {
        stated.put("roll", new Stated("--roll", text));
    }

    @Option(names = "--hill", paramLabel = "ANGLE|%", descriptionKey = "wear.hill")
    void hill(String text) {
        stated.put("hill", new Stated("--hill", text));
    }

    @Option(names = "--load", paramLabel = "FORCE", descriptionKey = "wear.load")
    void load(String text) {
        stated.put("load", new Stated("--load", text));
    }

    @Option(names = "--oil", paramLabel = "TEMPERATURE", descriptionKey = "wear.oil")
    void oil(String text) {
        stated.put("oil", new Stated("--oil", text));
    }

    RequirementAsked asked() {
        return new RequirementAsked(stated, Optional.ofNullable(pressure).map(text -> new Stated("--pressure", text)));
    }
}
