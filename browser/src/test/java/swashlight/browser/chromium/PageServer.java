package swashlight.browser.chromium;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * Serves the compiled physics and the tests' scripts, with the policies a web server should send: the page is strict, and only the worker
 * that runs the physics may build functions from text.
 */
final class PageServer implements AutoCloseable {
    static final String PAGE_POLICY = "default-src 'none'; script-src 'self'; worker-src 'self'; connect-src 'self'";
    static final String WORKER_POLICY =
            "default-src 'none'; script-src 'self' 'unsafe-eval'; worker-src 'self'; connect-src 'self'";
    private static final long PATIENCE = 180; // s, for one script; a guard, not a measurement

    private static final Path PHYSICS = Path.of(System.getProperty("physics.directory", "target/physics"));
    private static final Path PROOF = Path.of(System.getProperty("proof.directory", "target/proof"));
    private static final Path SCRIPTS = Path.of("src", "test", "resources", "page");

    private record Outcome(byte[] bytes, boolean failed) {}

    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final BlockingQueue<Job> jobs = new SynchronousQueue<>();
    private final BlockingQueue<Outcome> outcomes = new LinkedBlockingQueue<>();
    private volatile byte[] input = {};

    private PageServer(HttpServer server) {
        this.server = server;
    }

    static PageServer start() throws IOException {
        PageServer pages =
                new PageServer(HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0));
        pages.server.createContext("/", pages::file);
        pages.server.createContext("/next", pages::next);
        pages.server.createContext("/input", exchange -> pages.send(exchange, "application/octet-stream", pages.input));
        pages.server.createContext("/answer", exchange -> pages.outcome(exchange, false));
        pages.server.createContext("/failure", exchange -> pages.outcome(exchange, true));
        pages.server.setExecutor(pages.threads);
        pages.server.start();
        return pages;
    }

    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/page.html";
    }

    /** Hands a job to the page and waits for its answer, as long as there is somebody to give one. */
    synchronized Answer run(Job job, BooleanSupplier alive) {
        ByteBuffer bytes =
                ByteBuffer.allocate(job.input().length * Double.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        bytes.asDoubleBuffer().put(job.input());
        input = bytes.array();
        try {
            boolean taken = false;
            Outcome outcome = null;
            for (int second = 0; second < PATIENCE && outcome == null && alive.getAsBoolean(); second++) {
                taken = taken || jobs.offer(job, 1, TimeUnit.SECONDS);
                outcome = taken ? outcomes.poll(1, TimeUnit.SECONDS) : null;
            }
            if (outcome == null) {
                throw new AssertionError((taken ? job.script() + " did not answer" : "Chromium did not ask for work")
                        + (alive.getAsBoolean() ? "" : ": it has ended") + "; see target/chromium.log");
            }
            if (outcome.failed()) {
                throw new AssertionError(job.script() + " on " + job.target() + ": "
                        + new String(outcome.bytes(), StandardCharsets.UTF_8));
            }
            return new Answer(outcome.bytes());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new AssertionError(interrupted);
        }
    }

    private void next(HttpExchange exchange) throws IOException {
        try {
            Job job = jobs.poll(5, TimeUnit.SECONDS);
            String text = job == null ? "" : job.script() + " " + job.target();
            send(exchange, "text/plain", text.getBytes(StandardCharsets.UTF_8));
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
            exchange.close();
        }
    }

    private void outcome(HttpExchange exchange, boolean failed) throws IOException {
        byte[] body = exchange.getRequestBody().readAllBytes();
        send(exchange, "text/plain", new byte[0]);
        outcomes.add(new Outcome(body, failed));
    }

    private void file(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath().substring(1);
        Path file = path.startsWith("physics/")
                ? PHYSICS.resolve(path.substring("physics/".length()))
                : path.startsWith("proof/") ? PROOF.resolve(path.substring("proof/".length())) : SCRIPTS.resolve(path);
        if (path.contains("..") || !Files.isRegularFile(file)) {
            exchange.sendResponseHeaders(404, -1);
            exchange.close();
            return;
        }
        exchange.getResponseHeaders()
                .set("Content-Security-Policy", path.equals("worker.js") ? WORKER_POLICY : PAGE_POLICY);
        send(exchange, type(path), Files.readAllBytes(file));
    }

    private static String type(String path) {
        return path.endsWith(".html")
                ? "text/html; charset=utf-8"
                : path.endsWith(".wasm") ? "application/wasm" : "text/javascript; charset=utf-8";
    }

    private void send(HttpExchange exchange, String type, byte[] body) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", type);
        exchange.getResponseHeaders().set("Cache-Control", "no-store");
        exchange.sendResponseHeaders(200, body.length == 0 ? -1 : body.length);
        exchange.getResponseBody().write(body);
        exchange.close();
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}
