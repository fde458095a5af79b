package swashlight.desk.line;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import swashlight.desk.work.CircumstancesAsked;
import swashlight.desk.work.Stated;

/** The circumstances, one option each; texts with units, read by the desk. */
final class ConditionOptions {
    private final Map<String, Stated> stated = new LinkedHashMap<>();

    @Option(names = "--stroke", paramLabel = "SHARE")
    void stroke(String text) {
        state("stroke", "--stroke", text);
    }

    @Option(names = "--throttle", paramLabel = "SHARE")
    void throttle(String text) {
        state("throttle", "--throttle", text);
    }

    @Option(
            names = {"--input-speed"},
            paramLabel = "SPEED")
    void inputSpeed(String text) {
        state("inputSpeed", "--input-speed", text);
    }

    @Option(
            names = {"--oil"},
            paramLabel = "TEMPERATURE")
    void oil(String text) {
        state("oilTemperature", "--oil", text);
    }

    @Option(names = "--slope", paramLabel = "ANGLE|%")
    void slope(String text) {
        state("slope", "--slope", text);
    }

    @Option(names = "--load", paramLabel = "FORCE")
    void load(String text) {
        state("load", "--load", text);
    }

    @Option(names = "--pushed", paramLabel = "SPEED")
    void pushed(String text) {
        state("pushedSpeed", "--pushed", text);
    }

    @Option(names = "--brake", paramLabel = "SHARE")
    void brake(String text) {
        state("brake", "--brake", text);
    }

    @Option(names = "--bypass", paramLabel = "SHARE")
    void bypass(String text) {
        state("bypass", "--bypass", text);
    }

    @Option(names = "--outside", paramLabel = "TEMPERATURE")
    void outside(String text) {
        state("ambient", "--outside", text);
    }

    @Option(names = "--air", paramLabel = "PRESSURE")
    void air(String text) {
        state("ambientPressure", "--air", text);
    }

    @Option(names = "--wheels", paramLabel = "ground|lifted|held")
    void wheels(String text) {
        state("wheels", "--wheels", text);
    }

    @Option(names = "--engine-off")
    void engineOff(boolean off) {
        state("engine", "--engine-off", off ? "off" : "running");
    }

    @Option(names = "--from-rest")
    void fromRest(boolean yes) {
        state("fromRest", "--from-rest", yes ? "yes" : "no");
    }

    @Option(names = "--duty", paramLabel = "FILE")
    private String duty;

    CircumstancesAsked asked(Session session) {
        return new CircumstancesAsked(
                Optional.ofNullable(duty)
                        .map(name -> new Stated("--duty", session.file(name).toString())),
                stated);
    }

    private void state(String key, String option, String text) {
        stated.put(key, new Stated(option, text));
    }
}
