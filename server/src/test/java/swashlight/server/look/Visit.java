package swashlight.server.look;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Response;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;

/** One visit to the page, from its first address until closed, with all that the browser complained of. */
final class Visit implements AutoCloseable {
    /** What scripts may name: the page's store, its engine, its frame, the picture, and where its modules lie. */
    private static final String NAMES = """
            const base = document.querySelector("script[type=module]").src.replace(/main\\.js.*$/, "");
            const { store } = await import(base + "core/store.js");
            const shell = document.querySelector("swash-page");
            const engine = shell.engine;
            const scene = shell.renderRoot.querySelector("swash-scene");
            const later = (ms) => new Promise((done) => setTimeout(done, ms));
            """;

    private static final int PATIENCE = 60_000; // ms: a slow machine with other work; nothing is asserted about time

    private final BrowserContext context;
    private final Page page;
    private final Look look;
    private final String address;
    private final List<String> complaints = new CopyOnWriteArrayList<>();
    private final List<Request> requests = new ArrayList<>();

    private Visit(BrowserContext context, Look look, String address) {
        this.context = context;
        this.page = context.newPage();
        this.look = look;
        this.address = address;
        page.setDefaultTimeout(PATIENCE);
        page.onConsoleMessage(this::heard);
        page.onPageError(error -> complaints.add("error: " + error));
        page.onRequestFinished(requests::add);
        page.onResponse(this::answered);
    }

    static Visit to(String address, Browser browser, Look look) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(look.width(), look.height())
                .setHasTouch(look.phone())
                .setIsMobile(look.phone())
                .setLocale("en-GB"));
        // As if somebody had chosen theme and language the last time.
        context.addInitScript(
                "if (!localStorage.getItem('swashlight.gaze')) localStorage.setItem('swashlight.gaze', '{\"theme\":\""
                        + look.theme() + "\",\"language\":\"" + look.language() + "\"}')");
        return new Visit(context, look, address).open();
    }

    private Visit open() {
        page.navigate(address);
        awaitDrive();
        return this;
    }

    /** Loads the page again and waits for the drive. */
    void again() {
        page.reload();
        awaitDrive();
    }

    private void awaitDrive() {
        until("the drive is computed", () -> truth("return !!engine?.frame?.machines[0]?.values.length"));
        until("the drive is drawn", () -> truth("return scene.drawn().length > 0"));
    }

    Page page() {
        return page;
    }

    Look look() {
        return look;
    }

    BrowserContext context() {
        return context;
    }

    /** Everything that was fetched until now. */
    List<Request> requests() {
        return List.copyOf(requests);
    }

    /** What the browser complained of until now: errors, warnings of its policies, files that are missing. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** Runs a script in the page, as the body of a function that returns an answer. */
    Object ask(String script) {
        return page.evaluate("async (given) => {" + NAMES + script + "}");
    }

    /** The same with something given to it. */
    Object ask(String script, Object given) {
        return page.evaluate("async (given) => {" + NAMES + script + "}", given);
    }

    /** The same, answered by yes or no; no while the page is not so far. */
    boolean truth(String script) {
        return Boolean.TRUE.equals(
                page.evaluate("async () => { try {" + NAMES + script + "} catch { return false; } }"));
    }

    double number(String script) {
        return ((Number) ask(script)).doubleValue();
    }

    @SuppressWarnings("unchecked")
    List<Object> list(String script) {
        return (List<Object>) ask(script);
    }

    @SuppressWarnings("unchecked")
    Map<String, Object> map(String script) {
        return (Map<String, Object>) ask(script);
    }

    /** Waits until something holds; fails with its name when it does not come about. */
    void until(String what, BooleanSupplier holds) {
        long end = System.nanoTime() + PATIENCE * 1_000_000L;
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain until " + what + "; the browser said " + complaints);
            }
            page.waitForTimeout(100);
        }
    }

    /** Keeps what is seen now in {@code target/screens}. */
    void picture(String of) {
        Path file = Path.of(System.getProperty("screens.directory"), look.name() + "-" + of + ".png");
        page.screenshot(new Page.ScreenshotOptions().setPath(file));
    }

    private void heard(ConsoleMessage message) {
        if (message.type().equals("error") || message.type().equals("warning")) {
            complaints.add(message.type() + ": " + message.text() + " (" + message.location() + ")");
        }
    }

    private void answered(Response response) {
        if (response.status() >= 400) {
            complaints.add(response.status() + ": " + response.url());
        }
    }

    @Override
    public void close() {
        context.close();
    }
}
