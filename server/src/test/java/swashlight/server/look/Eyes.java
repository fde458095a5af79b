package swashlight.server.look;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A browser without a window and a server to look at, for all tests of a run. */
final class Eyes implements AutoCloseable {
    /** WebGL is drawn by the processor; nothing is fetched from elsewhere. */
    private static final List<String> QUIET = List.of(
            "--no-sandbox", // tests may run as root
            "--use-gl=angle",
            "--use-angle=swiftshader",
            "--enable-unsafe-swiftshader",
            "--disable-dev-shm-usage",
            "--disable-quic",
            "--disable-extensions",
            "--disable-sync",
            "--disable-background-networking",
            "--disable-component-update",
            "--no-default-browser-check",
            "--no-first-run");

    private final Serve serve = Serve.start();
    private final Playwright playwright;
    private final Browser browser;

    Eyes() {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(installed().orElseThrow())
                        .setArgs(QUIET));
    }

    /** Where Chromium is, if this machine has it. */
    static Optional<Path> installed() {
        return Stream.of(System.getenv("PATH").split(":"))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser").map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** The page opened for the first time: nothing is kept from other visits. */
    Visit visit(Look look) {
        return Visit.to(serve.address(), browser, look);
    }

    /** The same at another server. */
    Visit visit(Serve other, Look look) {
        return Visit.to(other.address(), browser, look);
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
        serve.close();
    }
}
