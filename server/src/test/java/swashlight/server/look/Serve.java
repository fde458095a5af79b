package swashlight.server.look;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The one jar, serving as the first command does, on a port of its own, until closed. */
final class Serve implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://\\S+/");

    private final Process process;
    private final String address;

    private Serve(Process process, String address) {
        this.process = process;
        this.address = address;
    }

    static Serve start() {
        try {
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-jar",
                            System.getProperty("one.jar"),
                            "serve",
                            "--port",
                            "0")
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            Runtime.getRuntime().addShutdownHook(new Thread(process::destroy)); // when tests are broken off
            BufferedReader told = process.inputReader(StandardCharsets.UTF_8);
            String line = told.readLine();
            Matcher address = ADDRESS.matcher(line == null ? "" : line);
            if (!address.find()) {
                throw new IllegalStateException("serve did not say where it is open, but: " + line);
            }
            return new Serve(process, address.group());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** With a slash at the end. */
    String address() {
        return address;
    }

    @Override
    public void close() {
        process.destroy();
        process.onExit().join();
    }
}
