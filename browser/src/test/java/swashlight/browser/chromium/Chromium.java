package swashlight.browser.chromium;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** One Chromium without a window, at work on the pages of a {@link PageServer} until closed. */
public final class Chromium implements AutoCloseable {
    private static final List<String> QUIET = List.of(
            "--headless=new",
            "--no-sandbox", // tests may run as root
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--disable-quic",
            "--disable-extensions",
            "--disable-sync",
            "--disable-background-networking",
            "--disable-component-update",
            "--no-default-browser-check",
            "--no-first-run");

    private final PageServer server;
    private final Process process;
    private final Path profile;

    private Chromium(PageServer server, Process process, Path profile) {
        this.server = server;
        this.process = process;
        this.profile = profile;
    }

    /** Where Chromium is, if this machine has it. */
    public static Optional<Path> installed() {
        return Stream.of(System.getenv("PATH").split(":"))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser").map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Starts it on the first page. */
    public static Chromium start() {
        try {
            PageServer server = PageServer.start();
            Path profile = Files.createTempDirectory("swashlight-chromium");
            List<String> command = Stream.of(
                            Stream.of(installed().orElseThrow().toString()),
                            QUIET.stream(),
                            Stream.of("--user-data-dir=" + profile, server.address()))
                    .flatMap(part -> part)
                    .toList();
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(Path.of("target", "chromium.log").toFile())
                    .start();
            Runtime.getRuntime().addShutdownHook(new Thread(process::destroy)); // when tests are broken off
            return new Chromium(server, process, profile);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Runs a script of {@code src/test/resources/page} on a form of the physics and waits for its answer. */
    public Answer run(String script, String target, double... input) {
        return server.run(new Job(script, target, input), process::isAlive);
    }

    @Override
    public void close() {
        server.close();
        process.descendants().forEach(ProcessHandle::destroy);
        process.destroy();
        try {
            process.waitFor(10, TimeUnit.SECONDS);
            deleteProfile();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void deleteProfile() {
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException | UncheckedIOException goingAway) {
            System.err.println("left behind: " + profile + " (" + goingAway + ")");
        }
    }
}
