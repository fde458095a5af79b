package swashlight.server.look;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Keyboard;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What somebody does to the page: by keys alone, with a way back, in another language and other units. */
@WithEyes
final class HandInBrowser {
    /** Every control that is seen and can be used, through all shadow roots; and which of them has the focus. */
    private static final String CONTROLS = """
            const all = (root) => [...root.querySelectorAll("*")].flatMap((each) => [each, ...(each.shadowRoot ? all(each.shadowRoot) : [])]);
            const usable = all(document).filter((each) => each.matches("button, select, input, textarea, a[href], summary, [tabindex='0']")
                && !each.disabled && each.tabIndex >= 0 && each.checkVisibility({ visibilityProperty: true }) && !each.closest("dialog:not([open])"));
            const named = (each) => each.localName + " " + (each.getAttribute("aria-label") ?? each.labels?.[0]?.textContent ?? each.textContent ?? "").replace(/\\s+/g, " ").trim().slice(0, 40);
            let focused = document.activeElement;
            while (focused?.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
            """;

    @Test
    void everyControlIsReachedByTabAndShowsIt(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            visit.ask("store.setGaze({ running: false })"); // so that nothing comes and goes
            visit.page().waitForTimeout(500);
            Keyboard keys = visit.page().keyboard();
            visit.ask(CONTROLS + "globalThis.reached = new Set(); globalThis.blind = [];"
                    + "const probe = document.body.appendChild(document.createElement('i')); probe.style.color = 'var(--focus)';"
                    + "globalThis.focusColour = getComputedStyle(probe).color; probe.remove();");
            double count = visit.number(CONTROLS + "return usable.length");
            assertThat(count).as("controls on the page").isGreaterThan(20);
            for (int press = 0; press < count + 20; press++) {
                keys.press("Tab");
                visit.ask(CONTROLS + """
                        if (focused && focused !== document.body) {
                            reached.add(focused);
                            const style = getComputedStyle(focused);
                            // A sign of the circuit shows it by the line around it.
                            const inked = [...focused.querySelectorAll("*")].map((each) => getComputedStyle(each))
                                .some((each) => each.stroke === focusColour && parseFloat(each.strokeWidth) >= 2);
                            const shown = style.outlineStyle !== "none" && parseFloat(style.outlineWidth) > 0 || style.boxShadow !== "none" || inked;
                            if (!shown) blind.push(named(focused));
                        }
                        """);
            }
            // Of a group of radio buttons Tab reaches the chosen one: the arrows reach the others (HTML, ARIA
            // practices).
            assertThat(visit.list(CONTROLS
                            + "return usable.filter((each) => each.type !== 'radio' && !reached.has(each)).map(named)"))
                    .as("controls that Tab never reaches")
                    .isEmpty();
            assertThat(visit.list("return [...new Set(blind)]"))
                    .as("controls that do not show the focus")
                    .isEmpty();
        }
    }

    @Test
    void theDriveIsDrivenByKeysAndTakenBack(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            Keyboard keys = visit.page().keyboard();
            double before = visit.number("return store.bench.hand.stroke");
            keys.press("s");
            assertThat(visit.number("return store.bench.hand.stroke"))
                    .as("s draws the lever back")
                    .isLessThan(before);
            keys.press("n");
            assertThat(visit.number("return store.bench.hand.stroke"))
                    .as("n is neutral")
                    .isZero();
            visit.until(
                    "the plate stands at neutral",
                    () -> visit.truth("return Math.abs(scene.drawn()[0].pumpTilt) < 0.02"));
            keys.press("Control+z");
            keys.press("Control+z");
            assertThat(visit.number("return store.bench.hand.stroke"))
                    .as("taken back twice")
                    .isEqualTo(before);
            keys.press("Control+Shift+Z");
            assertThat(visit.number("return store.bench.hand.stroke"))
                    .as("and done again")
                    .isLessThan(before);
            keys.press("Space");
            assertThat(visit.truth("return store.gaze.running"))
                    .as("space stops it")
                    .isFalse();
            double angle = visit.number("await later(600); return scene.drawn()[0].pumpAngle");
            keys.press(".");
            visit.until(
                    "a point steps on by a degree",
                    () -> Math.abs(Math.abs(Math.IEEEremainder(
                                            visit.number("return scene.drawn()[0].pumpAngle") - angle, 2 * Math.PI))
                                    - Math.PI / 180)
                            < 1e-3);
            keys.press("]");
            assertThat(visit.ask("return store.gaze.part"))
                    .as("] goes to the next part")
                    .isNotEqualTo("");
            keys.press("Escape");
            assertThat(visit.ask("return store.gaze.part")).isEqualTo("");
            keys.press("?");
            assertThat(visit.page()
                            .getByRole(com.microsoft.playwright.options.AriaRole.DIALOG)
                            .count())
                    .as("? opens help")
                    .isEqualTo(1);
            assertThat(Axe.violations(visit)).as("help").isEmpty();
            assertThat(visit.complaints()).isEmpty();
        }
    }

    /** What was set is there the next time, and travels in a link. */
    @Test
    void whatWasSetIsKept(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            visit.ask("store.setBench({ hand: { slope: 0.12 }, faults: { 'pump-bores-worn': 2e-5 } }, 'test')");
            Object bench = visit.ask("return JSON.stringify(store.bench)");
            Object link = visit.ask("return store.link()");
            visit.again();
            assertThat(visit.ask("return JSON.stringify(store.bench)")).isEqualTo(bench);
            try (Visit other = eyes.visit(Look.DESK)) {
                other.ask("location.hash = given", link);
                other.again();
                assertThat(other.ask("return JSON.stringify(store.bench)")).isEqualTo(bench);
            }
        }
    }

    @Test
    void bothLanguagesAreComplete(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            List<Object> lacking = visit.list("""
                    const words = await import(base + "core/words.js");
                    const [en, de] = [await words.allWords("en"), await words.allWords("de")];
                    // What physics and drives say of themselves they say in English: only another language needs words for it.
                    const own = Object.keys(de).filter((key) => !/^(parameter|unit|fault|severity|signal|point|ledger|event|duty|zone|place)\\.|^drive\\..*\\.about$/.test(key));
                    return [...Object.keys(en).filter((key) => !(key in de)).map((key) => "de lacks " + key), ...own.filter((key) => !(key in en)).map((key) => "en lacks " + key)];
                    """);
            assertThat(lacking).isEmpty();
            // Each place is opened in English and turned to German while it stands there.
            for (String place : List.of("circuit", "curves", "balance", "tones", "telling", "stories")) {
                turned(visit, "shown", place);
            }
            for (String place : List.of("hand", "faults", "drive", "opening")) {
                turned(visit, "asked", place);
            }
            assertThat(visit.ask("return document.documentElement.lang")).isEqualTo("de");
            visit.ask("store.setGaze({ language: 'de' }); shell.asked = 'hand'; await later(600);");
            visit.picture("german");
            assertThat(visit.complaints()).isEmpty();
        }
    }

    private static void turned(Visit visit, String side, String place) {
        visit.ask(
                "store.setGaze({ language: 'en' }); shell[given[0]] = given[1]; await later(600);",
                List.of(side, place));
        String turn = """
                store.setGaze({ language: "de" });
                await later(800);
                const words = await import(base + "core/words.js");
                const [en, de] = [await words.allWords("en"), await words.allWords("de")];
                const german = new Set(Object.values(de));
                const english = new Set(Object.values(en).filter((text) => text.length > 3 && !german.has(text)));
                const all = (root) => [...root.querySelectorAll("*")].flatMap((each) => [each, ...(each.shadowRoot ? all(each.shadowRoot) : [])]);
                const left = all(document.body).filter((each) => each.checkVisibility() && !each.closest("[lang=en]"))
                    .flatMap((each) => [each.getAttribute("aria-label"), each.title, ...[...each.childNodes].filter((node) => node.nodeType === 3).map((node) => node.data)])
                    .map((text) => (text ?? "").trim()).filter((text) => english.has(text));
                return [...[...words.missing].map((key) => "no words for " + key), ...left.map((text) => "still English: " + text)];
                """;
        assertThat(visit.list(turn)).as(place).isEmpty();
    }

    @Test
    void unitsAreOneTapApart(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            String read =
                    "await later(700); return shell.renderRoot.querySelector('swash-readout').renderRoot.textContent";
            assertThat((String) visit.ask(read)).contains("bar", "km/h");
            visit.page().keyboard().press("u");
            assertThat((String) visit.ask(read)).contains("psi", "mph").doesNotContain("bar", "km/h");
            visit.picture("us");
            assertThat(visit.complaints()).isEmpty();
        }
    }
}
