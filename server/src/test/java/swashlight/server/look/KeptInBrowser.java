package swashlight.server.look;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Request;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a visit costs, and what is left of the page when the network goes. */
@WithEyes
final class KeptInBrowser {
    private static final double MOST = 1.5 * 1024 * 1024; // bytes of a first visit, packed

    /** Everything until the drive is drawn, the worker's own files included. */
    @Test
    void aFirstVisitIsSmall(Eyes eyes) {
        try (Visit visit = eyes.visit(Look.DESK)) {
            List<Request> fetched = visit.requests();
            assertThat(fetched)
                    .as("the worker's files are counted too")
                    .anyMatch(request -> request.url().endsWith("/physics/swashlight.wasm"));
            assertThat(fetched).anyMatch(request -> request.url().endsWith("/three.module.min.js"));
            double bytes = fetched.stream()
                    .mapToDouble(request -> request.sizes().responseBodySize + request.sizes().responseHeadersSize)
                    .sum();
            System.out.printf("a first visit: %d files, %.0f KiB%n", fetched.size(), bytes / 1024);
            assertThat(bytes).as("bytes over the wire").isBetween(MOST / 20, MOST);
        }
    }

    @Test
    void itOpensWithoutANetworkOnceItWasOpened(Eyes eyes) {
        Serve serve = Serve.start();
        try (Visit visit = eyes.visit(serve, Look.PHONE)) {
            visit.until(
                    "the page is kept",
                    () -> visit.truth(
                            "return (await import(base + 'shell/offline.js')).keeping.state === 'kept' && !!navigator.serviceWorker.controller"));
            serve.close(); // nothing answers any more
            visit.again();
            visit.picture("offline");
            assertThat(visit.number("return engine.frame.machines.length")).isEqualTo(1);
            visit.ask("store.setGaze({ language: 'de' }); await later(500);");
            assertThat(visit.list("return [...(await import(base + 'core/words.js')).missing]"))
                    .as("German is kept too")
                    .isEmpty();
            for (String place : List.of("circuit", "curves", "balance", "tones", "telling", "stories")) {
                visit.ask("shell.shown = given; await later(500);", place);
            }
            assertThat(visit.list("return shell.missing"))
                    .as("views that could not be fetched")
                    .isEmpty();
        } finally {
            serve.close();
        }
    }

    /** Stated, not asserted: how soon it is there and how fluently it moves, drawn by the processor. */
    @Test
    void howFluentItIs(Eyes eyes) {
        long begun = System.nanoTime();
        try (Visit visit = eyes.visit(Look.DESK)) {
            double drawn = (System.nanoTime() - begun) / 1e9;
            visit.page().waitForTimeout(6000);
            double moving = visit.number("return scene.framesPerSecond()");
            long again = System.nanoTime();
            visit.again();
            System.out.printf(
                    "desk, 1440×900, WebGL by the processor, load %.1f on %d cores: drive drawn %.1f s after the first visit began,"
                            + " %.1f s after the second; %.0f pictures a second%n",
                    ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                    Runtime.getRuntime().availableProcessors(),
                    drawn,
                    (System.nanoTime() - again) / 1e9,
                    moving);
            assertThat(moving).as("it moves").isPositive();
        }
    }
}
