package swashlight.server.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * What is drawn is what is computed: positions, angles and colours read back from the objects of the picture, beside the engine's numbers of
 * the same moment and beside closed forms of our own.
 */
@WithEyes
final class DrawnInBrowser {
    private static final double POSITION = 2e-7; // m: the picture's matrices are single precision, in millimetres
    private static final double ANGLE = 1e-6; // rad
    private static final double SHADE = 1.0 / 255; // of full red, green or blue

    /** One moment: the picture's readings, and what the engine says of the same frame. */
    private static final String MOMENT = """
            store.setGaze({ running: false });
            if (given) { engine.stepDegrees("pump", given); }
            await later(700);
            const { signal, chamber, parameter } = await import(base + "core/live.js");
            const { colourOf } = await import(base + "core/ramp.js");
            const keys = engine.atlas.parameters.keys;
            const drawn = scene.drawn();
            return engine.frame.machines.map((state, place) => {
                const unit = (name, count) => Array.from({ length: count }, (_, k) => ({
                    position: chamber(state, name, k + 1, "position"), pressure: chamber(state, name, k + 1, "pressure"),
                    drawn: drawn[place][name + "Pistons"][k], shade: drawn[place][name + "Chambers"][k],
                    colour: colourOf(chamber(state, name, k + 1, "pressure")) }));
                return { drawn: drawn[place], pump: unit("pump", state.pumpPistons), motor: unit("motor", state.motorPistons),
                    signals: Object.fromEntries(state.keys.map((key) => [key, signal(state, key)])),
                    parameters: Object.fromEntries(keys.map((key) => [key, parameter(state, keys, key)])),
                    passages: { a: colourOf(signal(state, "pressure_a")), b: colourOf(signal(state, "pressure_b")) } };
            });
            """;

    @Test
    void pistonsStandWhereTheyAreComputed(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            for (int degrees : new int[] {0, 7, 31, 90}) {
                Map<String, Object> machine = moments(visit, degrees).get(0);
                for (String unit : List.of("pump", "motor")) {
                    assertThat(maps(machine, unit)).anyMatch(piston -> Math.abs(number(piston, "position")) > 1e-3);
                    for (Map<String, Object> piston : maps(machine, unit)) {
                        assertThat(number(piston, "drawn"))
                                .as("%s, %d° on", unit, degrees)
                                .isCloseTo(number(piston, "position"), within(POSITION));
                    }
                }
            }
        }
    }

    /** Kinematics of the swash plate from any textbook: x = R·tan α·cos(θ + 2πk/N), R pitch radius, α tilt, θ angle of the shaft. */
    @Test
    void pistonsStandWhereTheClosedFormPutsThem(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            Map<String, Object> machine = moments(visit, 40).get(0);
            Map<String, Object> signals = map(machine, "signals");
            double throwLength =
                    number(map(machine, "parameters"), "pump.pitchRadius") * Math.tan(number(signals, "swash_angle"));
            List<Map<String, Object>> pistons = maps(machine, "pump");
            for (int k = 0; k < pistons.size(); k++) {
                double angle = number(signals, "pump_angle") + 2 * Math.PI * k / pistons.size();
                assertThat(Math.abs(number(pistons.get(k), "drawn")))
                        .as("piston %d", k + 1)
                        .isCloseTo(Math.abs(throwLength * Math.cos(angle)), within(10 * POSITION));
            }
        }
    }

    @Test
    void oilHasTheColourOfItsPressure(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            Map<String, Object> machine = moments(visit, 12).get(0);
            for (String unit : List.of("pump", "motor")) {
                for (Map<String, Object> piston : maps(machine, unit)) {
                    sameColour(
                            unit + " at " + piston.get("pressure") + " Pa", piston.get("shade"), piston.get("colour"));
                }
            }
            for (String side : List.of("a", "b")) {
                Object drawn = map(machine, "drawn").get("passage" + (side.equals("a") ? "A" : "B"));
                sameColour("passage " + side, drawn, map(machine, "passages").get(side));
            }
        }
    }

    @Test
    void plateAndShaftsStandAsComputed(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            Map<String, Object> machine = moments(visit, 25).get(0);
            Map<String, Object> drawn = map(machine, "drawn");
            Map<String, Object> signals = map(machine, "signals");
            assertThat(number(drawn, "pumpTilt")).isCloseTo(number(signals, "swash_angle"), within(ANGLE));
            assertThat(turnsApart(number(drawn, "pumpAngle"), number(signals, "pump_angle")))
                    .isLessThan(ANGLE);
            assertThat(turnsApart(number(drawn, "motorAngle"), number(signals, "motor_angle")))
                    .isLessThan(ANGLE);
        }
    }

    /** Over the same stretch of time: what the wheel turned in the picture, and the motor's computed turn through the gears. */
    @Test
    void theWheelTurnsAtTheComputedSpeed(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            String now = """
                    const state = engine.frame.machines[0];
                    const { signal, parameter } = await import(base + "core/live.js");
                    return { wheel: scene.drawn()[0].wheelTurn, motor: signal(state, "motor_angle"), time: engine.frame.time,
                        speed: signal(state, "motor_speed"), ratio: parameter(state, engine.atlas.parameters.keys, "gears.ratio") };
                    """;
            String stop = "store.setGaze({ running: false }); await later(700);";
            String go = "store.setGaze({ pace: 0.1, running: true }); await later(1500);";
            Map<String, Object> before = visit.map(stop + now);
            visit.ask(go);
            Map<String, Object> after = visit.map(stop + now);
            double time = number(after, "time") - number(before, "time");
            assertThat(time).as("seconds of the machine").isGreaterThan(0.01);
            double wheel = Math.abs(number(after, "wheel") - number(before, "wheel"));
            double motor = Math.abs(number(after, "motor") - number(before, "motor"));
            assertThat(wheel)
                    .as("turn of the wheel, rad")
                    .isCloseTo(motor / number(after, "ratio"), within(1e-4 + 1e-3 * wheel));
            double mean = (number(before, "speed") + number(after, "speed")) / 2;
            assertThat(wheel / time)
                    .as("speed of the wheel, rad/s, from its turn and from the motor's speed")
                    .isCloseTo(Math.abs(mean) / number(after, "ratio"), within(0.05 * wheel / time));
        }
    }

    /** Both pictures move by their own numbers, under the same hand. */
    @Test
    void theSoundDriveBesideTheSickOne(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            visit.ask("store.setBench({ faults: { 'motor-face-worn': 40e-6 }, beside: true }, 'test')");
            visit.until(
                    "two machines are drawn",
                    () -> visit.truth("return scene.drawn().length === 2 && engine.frame.bench === store.number"));
            visit.page().waitForTimeout(2500);
            List<Map<String, Object>> machines = moments(visit, 15);
            visit.picture("beside");
            assertThat(machines).hasSize(2);
            for (Map<String, Object> machine : machines) {
                for (Map<String, Object> piston : maps(machine, "motor")) {
                    assertThat(number(piston, "drawn")).isCloseTo(number(piston, "position"), within(POSITION));
                    sameColour("motor", piston.get("shade"), piston.get("colour"));
                }
            }
            Map<String, Object> sick = map(machines.get(0), "signals");
            Map<String, Object> sound = map(machines.get(1), "signals");
            assertThat(number(sick, "swash_angle")).isCloseTo(number(sound, "swash_angle"), within(1e-3));
            assertThat(Math.abs(number(sick, "motor_speed")))
                    .as("the worn motor is slower uphill")
                    .isLessThan(Math.abs(number(sound, "motor_speed")));
            assertThat(visit.complaints()).isEmpty();
        }
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> moments(Visit visit, int degrees) {
        return (List<Map<String, Object>>) visit.ask(MOMENT, degrees);
    }

    @SuppressWarnings("unchecked")
    private static void sameColour(String of, Object drawn, Object computed) {
        List<Object> seen = (List<Object>) drawn;
        List<Object> wanted = (List<Object>) computed;
        for (int part = 0; part < 3; part++) {
            assertThat(((Number) seen.get(part)).doubleValue())
                    .as(of + ": " + seen + " beside " + wanted)
                    .isCloseTo(((Number) wanted.get(part)).doubleValue(), within(SHADE));
        }
    }

    private static double turnsApart(double one, double other) {
        return Math.abs(Math.IEEEremainder(one - other, 2 * Math.PI));
    }

    private static double number(Map<String, Object> from, String key) {
        return ((Number) from.get(key)).doubleValue();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Map<String, Object> from, String key) {
        return (Map<String, Object>) from.get(key);
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> maps(Map<String, Object> from, String key) {
        return (List<Map<String, Object>>) from.get(key);
    }
}
